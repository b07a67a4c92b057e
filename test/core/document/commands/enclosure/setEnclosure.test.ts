import { describe, expect, it } from 'vitest';
import type { Command } from '../../../../../src/core/document/command.ts';
import { edited, refusedFor } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('set-enclosure', () => {
  it('carries bounds of chambers that lie on the panels, to the bit where it is undone', () => {
    const taller = edited(twoWay, { type: 'set-enclosure', changes: { heightM: 0.5, depthM: 0.32 } });
    expect(taller.enclosure).toMatchObject({ heightM: 0.5, depthM: 0.32 });
    expect(taller.enclosure.chambers[0]!.volume).toEqual({
      kind: 'geometry',
      bottomM: 0.018,
      topM: 0.482,
      depthM: 0.284,
    });
    expect(taller.enclosure.chambers[1]).toBe(twoWay.enclosure.chambers[1]);
    expect(edited(taller, { type: 'set-enclosure', changes: { heightM: 0.4, depthM: 0.3 } })).toEqual(twoWay);
    const thicker = edited(twoWay, { type: 'set-enclosure', changes: { panelM: 0.022 } });
    expect(thicker.enclosure.chambers[0]!.volume).toMatchObject({ bottomM: 0.022, topM: 0.378, depthM: 0.256 });
  });

  it('leaves partitions where they are', () => {
    const volume = { kind: 'geometry', bottomM: 0.018, topM: 0.3, depthM: null } as const;
    const split = edited(twoWay, { type: 'set-chamber', id: 'main', changes: { volume } });
    const taller = edited(split, { type: 'set-enclosure', changes: { heightM: 0.5 } });
    expect(taller.enclosure.chambers[0]!.volume).toEqual(volume);
  });

  it.each<[string, Extract<Command, { type: 'set-enclosure' }>['changes']]>([
    ['too-small', { widthM: 0 }],
    ['wrong-type', { heightM: Number.NaN }],
    ['panel-too-thick', { panelM: 0.11 }],
    ['off-the-front', { heightM: 0.3 }],
  ])('refuses as %s: %o', (code, changes) => {
    expect(refusedFor(twoWay, { type: 'set-enclosure', changes })).toContain(code);
  });

  it('refuses a cabinet that is lower than a partition in it', () => {
    const volume = { kind: 'geometry', bottomM: 0.018, topM: 0.36, depthM: null } as const;
    const split = edited(twoWay, { type: 'set-chamber', id: 'main', changes: { volume } });
    const lower = { type: 'set-enclosure', changes: { heightM: 0.35 } } as const;
    expect(refusedFor(split, lower)).toEqual(['chamber-above-cabinet']);
  });
});

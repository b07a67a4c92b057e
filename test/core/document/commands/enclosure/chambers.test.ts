import { describe, expect, it } from 'vitest';
import { newChamber } from '../../../../../src/core/document/start/newChamber.ts';
import { edited, refusedFor } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('chambers', () => {
  const chamber = newChamber(twoWay);

  it('are added, changed and removed', () => {
    const added = edited(twoWay, { type: 'add-chamber', chamber });
    expect(added.enclosure.chambers.at(-1)).toBe(chamber);
    const stuffed = edited(added, { type: 'set-chamber', id: chamber.id, changes: { fillGain: 1.2, leak: null } });
    expect(stuffed.enclosure.chambers.at(-1)).toEqual({ ...chamber, fillGain: 1.2, leak: null });
    expect(edited(stuffed, { type: 'remove-chamber', id: chamber.id })).toEqual(twoWay);
  });

  it('take their ports along', () => {
    const moved = edited(twoWay, { type: 'set-mount', partId: 'LS1', changes: { chamberId: 'spare' } });
    const after = edited(moved, { type: 'remove-chamber', id: 'main' });
    expect(after.enclosure.ports).toEqual([]);
    expect(after.enclosure.chambers).toEqual([twoWay.enclosure.chambers[1]]);
  });

  it.each([
    ['chamber-in-use', { type: 'remove-chamber', id: 'main' }],
    ['unknown-chamber', { type: 'remove-chamber', id: 'attic' }],
    ['unknown-chamber', { type: 'set-chamber', id: 'attic', changes: {} }],
    ['duplicate-id', { type: 'add-chamber', chamber: { ...chamber, id: 'main' } }],
    ['empty', { type: 'add-chamber', chamber: { ...chamber, id: '' } }],
    ['too-small', { type: 'add-chamber', chamber: { ...chamber, volume: { kind: 'stated', grossM3: -0.01 } } }],
    ['too-small', { type: 'set-chamber', id: 'main', changes: { bracesM3: -1 } }],
    ['too-small', { type: 'set-chamber', id: 'main', changes: { leak: { q: 0, atHz: 40 } } }],
    [
      'chamber-upside-down',
      {
        type: 'set-chamber',
        id: 'main',
        changes: { volume: { kind: 'geometry', bottomM: 0.3, topM: 0.2, depthM: null } },
      },
    ],
    [
      'chamber-above-cabinet',
      {
        type: 'set-chamber',
        id: 'main',
        changes: { volume: { kind: 'geometry', bottomM: 0.1, topM: 0.5, depthM: null } },
      },
    ],
  ] as const)('refuse as %s: %o', (code, command) => {
    expect(refusedFor(twoWay, command)).toEqual([code]);
  });

  it('are twelve at most', () => {
    const full = Array.from({ length: 10 }, (_, k) => ({
      type: 'add-chamber' as const,
      chamber: { ...chamber, id: `extra-${k}` },
    }));
    const crowded = edited(twoWay, ...full);
    expect(refusedFor(crowded, { type: 'add-chamber', chamber })).toEqual(['too-many']);
  });
});

import { describe, expect, it } from 'vitest';
import { word } from '../../../../../src/core/messages/word.ts';
import { edited, refusalOf, refusedFor } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('set-mount', () => {
  it('moves a speaker', () => {
    const after = edited(twoWay, { type: 'set-mount', partId: 'LS2', changes: { xM: 0.03, yM: 0.3 } });
    expect(after.enclosure.mounts[1]).toEqual({ ...twoWay.enclosure.mounts[1], xM: 0.03, yM: 0.3 });
    expect(after.enclosure.mounts[0]).toBe(twoWay.enclosure.mounts[0]);
  });

  it('refuses places off the front, with the numbers', () => {
    const [flaw] = refusalOf(twoWay, { type: 'set-mount', partId: 'LS2', changes: { xM: 0.12 } });
    expect(flaw!.place).toEqual({ kind: 'mount', id: 'LS2' });
    expect(word(flaw!).sentence).toBe(
      'The centre of LS2 at 120 mm sideways and 310 mm up would lie outside the cabinet, 220 mm wide and 400 mm high.',
    );
  });

  it('refuses unknown chambers, unknown speakers and numbers that are none', () => {
    const set = (partId: string, changes: object) => ({ type: 'set-mount', partId, changes }) as const;
    expect(refusedFor(twoWay, set('LS1', { chamberId: 'attic' }))).toEqual(['mount-without-chamber']);
    expect(refusedFor(twoWay, set('LS7', { xM: 0 }))).toEqual(['unknown-speaker']);
    expect(refusedFor(twoWay, set('LS1', { acousticCentreZM: Number.NaN }))).toEqual(['wrong-type']);
  });
});

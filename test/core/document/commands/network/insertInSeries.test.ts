import { describe, expect, it } from 'vitest';
import { edited, refusedFor, wiring } from '../../edits.ts';
import { amplifier, twoWay } from '../../twoWay.ts';

const part = { kind: 'inductor', henry: 1e-3, dcrOhm: 0.2, coreLossTangent: 0, note: '' } as const;

describe('insert-in-series', () => {
  it('stands before the part at its first end, in the same direction', () => {
    const after = edited(twoWay, { type: 'insert-in-series', partId: 'C2', end: 0, part });
    expect(wiring(after).slice(4, 8)).toEqual(['J1 in hi', 'L3 hi n1', 'C2 n1 t1', 'L2 t1 0']);
  });

  it('stands after the part at its second end', () => {
    const after = edited(twoWay, { type: 'insert-in-series', partId: 'C1', end: 1, part });
    expect(wiring(after).slice(2, 5)).toEqual(['C1 w n1', 'L3 n1 0', 'LS1 w 0']);
  });

  it('comes between an amplifier and all that it feeds', () => {
    const after = edited(twoWay, { type: 'insert-in-series', partId: 'V1', end: 0, part });
    expect(wiring(after).slice(0, 3)).toEqual(['V1 n1 0', 'L3 n1 in', 'L1 in w']);
  });

  it('takes fresh nodes and names time after time', () => {
    const once = edited(twoWay, { type: 'insert-in-series', partId: 'C2', end: 0, part });
    const twice = edited(once, { type: 'insert-in-series', partId: 'L3', end: 1, part });
    expect(wiring(twice).slice(5, 8)).toEqual(['L3 hi n2', 'L4 n2 n1', 'C2 n1 t1']);
  });

  it('puts a speaker in series with a place of its own on the front', () => {
    const twin = { kind: 'speaker', driverId: 'woofer', note: '' } as const;
    const after = edited(twoWay, { type: 'insert-in-series', partId: 'LS1', end: 1, part: twin });
    expect(wiring(after)).toContain('LS3 n1 0');
    expect(after.enclosure.mounts[2]).toMatchObject({ partId: 'LS3', chamberId: 'main', acousticCentreZM: -0.03 });
  });

  it('refuses to lift an amplifier off the return, an amplifier in series, and a part that is not there', () => {
    expect(refusedFor(twoWay, { type: 'insert-in-series', partId: 'V1', end: 1, part })).toEqual(['amplifier-return']);
    const { kind, note } = amplifier('V2', ['a', '0']) as { kind: 'amplifier'; note: string };
    expect(refusedFor(twoWay, { type: 'insert-in-series', partId: 'L1', end: 0, part: { kind, note } })).toEqual([
      'amplifier-in-series',
    ]);
    expect(refusedFor(twoWay, { type: 'insert-in-series', partId: 'X1', end: 0, part })).toEqual(['unknown-part']);
    const bad = { ...part, henry: 0 };
    expect(refusedFor(twoWay, { type: 'insert-in-series', partId: 'L1', end: 0, part: bad })).toEqual(['too-small']);
  });
});

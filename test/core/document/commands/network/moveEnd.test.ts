import { describe, expect, it } from 'vitest';
import { edited, refusedFor, wiring } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('move-end', () => {
  it('moves one end of a part to another node', () => {
    expect(wiring(edited(twoWay, { type: 'move-end', partId: 'R2', end: 0, to: 't1' }))).toContain('R2 t1 0');
    expect(wiring(edited(twoWay, { type: 'move-end', partId: 'R2', end: 1, to: 'w' }))).toContain('R2 t2 w');
    expect(wiring(edited(twoWay, { type: 'move-end', partId: 'V1', end: 0, to: 'hi' }))).toContain('V1 hi 0');
  });

  it.each([
    ['both-ends', 'R2', 0, '0'],
    ['both-ends', 'V1', 0, '0'],
    ['unknown-node', 'R2', 0, 'nowhere'],
    ['amplifier-return', 'V1', 1, 'w'],
    ['unknown-part', 'R7', 1, 'w'],
    ['would-short', 'J1', 1, '0'],
  ] as const)('refuses as %s: end of %s', (code, partId, end, to) => {
    expect(refusedFor(twoWay, { type: 'move-end', partId, end, to })).toEqual([code]);
  });
});

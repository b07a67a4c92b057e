import { describe, expect, it } from 'vitest';
import { edited, refusedFor, wiring } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('reverse-speaker', () => {
  it('swaps the terminals; twice gives the same again', () => {
    const once = edited(twoWay, { type: 'reverse-speaker', partId: 'LS2' });
    expect(wiring(once)).toContain('LS2 t2 0');
    expect(edited(once, { type: 'reverse-speaker', partId: 'LS2' })).toEqual(twoWay);
  });

  it('refuses what is no speaker', () => {
    expect(refusedFor(twoWay, { type: 'reverse-speaker', partId: 'R1' })).toEqual(['unknown-speaker']);
  });
});

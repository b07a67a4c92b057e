import { describe, expect, it } from 'vitest';
import { edited, refusedFor, wiring } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

const ohms = (ohm: number) => ({ kind: 'resistor', ohm, ratedPowerW: null, note: '' }) as const;

describe('swap-part', () => {
  it('keeps place, nodes and name for the same kind', () => {
    const after = edited(twoWay, { type: 'swap-part', partId: 'R1', part: ohms(3.3) });
    expect(wiring(after)).toEqual(wiring(twoWay));
    expect(after.network.parts[7]).toEqual({ ...ohms(3.3), id: 'R1', nodes: ['t1', 't2'] });
  });

  it('gives the next name of its kind to another kind', () => {
    const after = edited(twoWay, { type: 'swap-part', partId: 'C2', part: ohms(3.3) });
    expect(after.network.parts[5]).toEqual({ ...ohms(3.3), id: 'R3', nodes: ['hi', 't1'] });
  });

  it('refuses to turn anything into, or out of, a speaker or an amplifier', () => {
    expect(refusedFor(twoWay, { type: 'swap-part', partId: 'LS1', part: ohms(8) })).toEqual(['keeps-kind']);
    expect(refusedFor(twoWay, { type: 'swap-part', partId: 'V1', part: ohms(8) })).toEqual(['keeps-kind']);
    const part = { kind: 'speaker', driverId: 'woofer', note: '' } as const;
    expect(refusedFor(twoWay, { type: 'swap-part', partId: 'R2', part })).toEqual(['keeps-kind']);
  });

  it('refuses a wire across a speaker, a bad value and an unknown part', () => {
    expect(refusedFor(twoWay, { type: 'swap-part', partId: 'C1', part: { kind: 'jumper', note: '' } })).toEqual([
      'would-short',
    ]);
    expect(refusedFor(twoWay, { type: 'swap-part', partId: 'C1', part: ohms(-1) })).toEqual(['too-small']);
    expect(refusedFor(twoWay, { type: 'swap-part', partId: 'C9', part: ohms(1) })).toEqual(['unknown-part']);
  });
});

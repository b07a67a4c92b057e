import { describe, expect, it } from 'vitest';
import { edited, refusalOf, refusedFor } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('set-part', () => {
  it('sets the values that a part has', () => {
    const part = (project: typeof twoWay, id: string) => project.network.parts.find((one) => one.id === id);
    const after = edited(
      twoWay,
      { type: 'set-part', partId: 'R1', changes: { ohm: 2.2, ratedPowerW: null, note: 'wire-wound' } },
      { type: 'set-part', partId: 'L1', changes: { coreLossTangent: 0.02, dcrOhm: 0.1 } },
      { type: 'set-part', partId: 'LS2', changes: { driverId: 'woofer' } },
    );
    expect(part(after, 'R1')).toEqual({ ...part(twoWay, 'R1'), ohm: 2.2, ratedPowerW: null, note: 'wire-wound' });
    expect(part(after, 'L1')).toEqual({ ...part(twoWay, 'L1'), coreLossTangent: 0.02, dcrOhm: 0.1 });
    expect(part(after, 'LS2')).toEqual({ ...part(twoWay, 'LS2'), driverId: 'woofer' });
  });

  it('refuses values that the part does not have, one problem each', () => {
    const problems = refusalOf(twoWay, { type: 'set-part', partId: 'R1', changes: { henry: 1, farad: 1 } });
    expect(problems.map(({ code, values }) => [code, values.field])).toEqual([
      ['document.no-such-value', 'henry'],
      ['document.no-such-value', 'farad'],
    ]);
  });

  it.each([
    ['unknown-part', 'R9', { ohm: 1 }],
    ['too-small', 'R1', { ohm: -1 }],
    ['too-small', 'C1', { farad: 0 }],
    ['too-small', 'L1', { henry: -1e-3 }],
    ['too-great', 'L1', { henry: 1e12 }],
    ['wrong-type', 'C1', { farad: Number.NaN }],
    ['speaker-without-driver', 'LS1', { driverId: 'mid' }],
  ])('refuses as %s: %s %o', (code, partId, changes) => {
    expect(refusedFor(twoWay, { type: 'set-part', partId, changes })).toEqual([code]);
  });

  it('refuses a resistor of 0 Ω across a speaker or the amplifier, since that is a short', () => {
    expect(refusedFor(twoWay, { type: 'set-part', partId: 'R2', changes: { ohm: 0 } })).toEqual(['would-short']);
    const across = edited(twoWay, {
      type: 'add-across',
      nodes: ['in', '0'],
      part: { kind: 'resistor', ohm: 100, ratedPowerW: null, note: '' },
    });
    const [flaw] = refusalOf(across, { type: 'set-part', partId: 'R3', changes: { ohm: 0 } });
    expect(flaw).toMatchObject({ code: 'document.would-short', place: { id: 'V1' } });
  });
});

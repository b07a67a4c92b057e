import { describe, expect, it } from 'vitest';
import { edited, refusedFor } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('curves', () => {
  const curve = { ...twoWay.curves[0]!, id: 'c9' };

  it('are added, changed and removed', () => {
    const added = edited(twoWay, { type: 'add-curve', curve });
    expect(added.curves.at(-1)).toBe(curve);
    const right = { kind: 'speaker', channel: 'right' } as const;
    const changed = edited(added, { type: 'set-curve', id: 'c9', changes: { name: 'Right', belongsTo: right } });
    expect(changed.curves.at(-1)).toEqual({ ...curve, name: 'Right', belongsTo: right });
    expect(edited(changed, { type: 'remove-curve', id: 'c9' })).toEqual(twoWay);
  });

  it('leave the driver that used them to its model', () => {
    const after = edited(twoWay, { type: 'remove-curve', id: 'c1' });
    expect(after.drivers[0]).toEqual({ ...twoWay.drivers[0], measured: null });
    expect(after.drivers[1]).toBe(twoWay.drivers[1]);
    const impedance = { ...twoWay.curves[2]!, id: 'c4', belongsTo: { kind: 'driver', driverId: 'woofer' } as const };
    const both = edited(
      twoWay,
      { type: 'add-curve', curve: impedance },
      {
        type: 'set-driver',
        driverId: 'woofer',
        changes: { measured: { responseCurveId: 'c1', impedanceCurveId: 'c4', blendHz: 250 } },
      },
      { type: 'remove-curve', id: 'c1' },
    );
    expect(both.drivers[0]!.measured).toEqual({ responseCurveId: null, impedanceCurveId: 'c4', blendHz: 250 });
  });

  it('stay while a kept state uses them', () => {
    const kept = edited(twoWay, { type: 'keep-state', name: 'before' });
    expect(refusedFor(kept, { type: 'remove-curve', id: 'c1' })).toEqual(['curve-in-use']);
  });

  it.each([
    ['unknown-curve', { type: 'remove-curve', id: 'x' }],
    ['unknown-curve', { type: 'set-curve', id: 'x', changes: {} }],
    ['duplicate-id', { type: 'add-curve', curve: { ...curve, id: 'c1' } }],
    ['curve-lengths', { type: 'add-curve', curve: { ...curve, magnitudes: [1, 2] } }],
    ['curve-lengths', { type: 'add-curve', curve: { ...curve, phasesDeg: [1, 2] } }],
    ['curve-order', { type: 'add-curve', curve: { ...curve, frequenciesHz: [20, 200, 200, 300] } }],
    ['curve-impedance', { type: 'add-curve', curve: { ...curve, quantity: 'impedance', magnitudes: [8, 8, 0, 8] } }],
    ['too-few', { type: 'add-curve', curve: { ...curve, frequenciesHz: [20] } }],
    ['too-small', { type: 'add-curve', curve: { ...curve, frequenciesHz: [0, 20, 30, 40] } }],
    ['curve-without-driver', { type: 'add-curve', curve: { ...curve, belongsTo: { kind: 'driver', driverId: 'x' } } }],
    ['curve-owner', { type: 'set-curve', id: 'c1', changes: { belongsTo: { kind: 'speaker', channel: 'left' } } }],
    ['curve-quantity', { type: 'set-curve', id: 'c1', changes: { quantity: 'impedance' } }],
  ] as const)('refuse as %s: %o', (code, command) => {
    expect(refusedFor(twoWay, command as Parameters<typeof refusedFor>[1])).toEqual([code]);
  });
});

import { describe, expect, it } from 'vitest';
import { word } from '../../../../../src/core/messages/word.ts';
import { edited, refusalOf, refusedFor } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('set-driver', () => {
  const { entered } = twoWay.drivers[0]!;

  it('sets what it names; a number left out of the sheet is gone', () => {
    const { xmaxM: _, ...rest } = entered;
    const after = edited(twoWay, {
      type: 'set-driver',
      driverId: 'woofer',
      changes: { name: 'Woofer B', entered: { ...rest, fsHz: 41 } },
    });
    expect(after.drivers[0]).toEqual({ ...twoWay.drivers[0], name: 'Woofer B', entered: { ...rest, fsHz: 41 } });
    expect(after.drivers[1]).toBe(twoWay.drivers[1]);
  });

  it('takes a number given as undefined for left out', () => {
    const changes = { entered: { ...entered, xmaxM: undefined } };
    const after = edited(twoWay, { type: 'set-driver', driverId: 'woofer', changes });
    expect(Object.keys(after.drivers[0]!.entered)).not.toContain('xmaxM');
  });

  it('names driver, field and value when refused', () => {
    const [flaw] = refusalOf(twoWay, {
      type: 'set-driver',
      driverId: 'tweeter',
      changes: { entered: { ...entered, sdM2: -0.0007 } },
    });
    expect(flaw!.place).toEqual({ kind: 'driver', id: 'tweeter', field: 'entered.sdM2' });
    expect(word(flaw!).sentence).toBe(
      'The cone area Sd of the driver “28 mm dome tweeter (invented)” is −7.0 cm²; it must be above 0 cm².',
    );
  });

  it('refuses curves that are not there, of the other quantity or of another owner, and unknown drivers', () => {
    const measured = (responseCurveId: string | null, impedanceCurveId: string | null) =>
      ({
        type: 'set-driver',
        driverId: 'woofer',
        changes: { measured: { responseCurveId, impedanceCurveId, blendHz: 300 } },
      }) as const;
    expect(refusedFor(twoWay, measured('c9', null))).toEqual(['curve-missing']);
    expect(refusedFor(twoWay, measured(null, 'c1'))).toEqual(['curve-quantity']);
    expect(refusedFor(twoWay, measured('c2', null))).toEqual(['curve-owner']);
    expect(refusedFor(twoWay, { type: 'set-driver', driverId: 'mid', changes: {} })).toEqual(['unknown-driver']);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blendCurves, blendWeight } from '../../../src/core/measured/blendCurves.ts';
import type { CurveTable } from '../../../src/core/measured/curveTable.ts';
import { resampleCurve } from '../../../src/core/measured/resampleCurve.ts';

const frequenciesHz = Float64Array.from({ length: 121 }, (_, i) => 20 * 2 ** (i / 12));
const curve = (magnitude: (f: number) => number, phase: (f: number) => number): CurveTable => ({
  frequenciesHz,
  magnitudes: frequenciesHz.map(magnitude),
  phasesRad: frequenciesHz.map(phase),
});

describe('blendWeight', () => {
  it('is one octave wide, even about its middle and never falls', () => {
    expect([500, 500 / Math.SQRT2, 500 * Math.SQRT2].map((f) => blendWeight(f, 500))).toEqual([
      0.5,
      expect.closeTo(0, 15),
      expect.closeTo(1, 15),
    ]);
    expect([10, 20000].map((f) => blendWeight(f, 500))).toEqual([0, 1]);
    for (let x = 0; x < 1; x += 0.05)
      expect(blendWeight(500 * 2 ** x, 500) + blendWeight(500 * 2 ** -x, 500)).toBeCloseTo(1, 14);
  });
});

describe('blendCurves', () => {
  const low = curve(
    (f) => f / 1000,
    (f) => -f / 3000,
  );
  const high = curve(
    () => 2,
    (f) => 0.3 - f / 2000 + 6 * Math.PI,
  );

  it('leaves both curves alone outside the octave', () => {
    const blended = blendCurves(low, high, 500);
    for (const [i, f] of frequenciesHz.entries()) {
      if (f < 353) expect([blended.magnitudes[i], blended.phasesRad[i]]).toEqual([low.magnitudes[i], low.phasesRad[i]]);
      // Three whole turns taken off.
      if (f > 708) {
        expect(blended.magnitudes[i]).toBe(2);
        expect(blended.phasesRad[i]).toBeCloseTo(high.phasesRad[i]! - 6 * Math.PI, 12);
      }
    }
  });
  it('is the mean of decibels and of phases in the middle', () => {
    const i = frequenciesHz.findIndex((f) => f > 500);
    const blended = blendCurves(low, high, frequenciesHz[i]!);
    expect(blended.magnitudes[i]).toBeCloseTo(Math.sqrt(low.magnitudes[i]! * 2), 12);
    expect(blended.phasesRad[i]).toBeCloseTo((low.phasesRad[i]! + high.phasesRad[i]! - 6 * Math.PI) / 2, 12);
  });
  it('gives a curve blended with itself, whole turns apart, back (seed 55)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -5, max: 5 }),
        fc.double({ min: 30, max: 15000, noNaN: true }),
        (turns, blendHz) => {
          const blended = blendCurves(
            low,
            { ...low, phasesRad: low.phasesRad.map((p) => p + 2 * Math.PI * turns) },
            blendHz,
          );
          return blended.phasesRad.every(
            (p, i) =>
              Math.abs(p - low.phasesRad[i]!) < 1e-12 &&
              Math.abs(blended.magnitudes[i]! / low.magnitudes[i]! - 1) < 1e-12,
          );
        },
      ),
      { seed: 55 },
    );
  });
  it('throws on different frequencies', () => {
    expect(() => blendCurves(low, { ...high, frequenciesHz: Float64Array.of(1) }, 500)).toThrow(RangeError);
  });
});

describe('resampleCurve', () => {
  it('keeps a curve on its own frequencies, is exact on powers of f and holds beyond the ends', () => {
    const power = curve(
      (f) => f ** 1.5,
      (f) => 2 * Math.log(f),
    );
    const own = resampleCurve(power, frequenciesHz);
    expect(own.magnitudes.every((m, i) => Math.abs(m / power.magnitudes[i]! - 1) < 1e-12)).toBe(true);
    const other = resampleCurve(power, Float64Array.of(10, 21, 333, 90000));
    expect(other.magnitudes[2]).toBeCloseTo(333 ** 1.5, 8);
    expect(other.phasesRad[1]).toBeCloseTo(2 * Math.log(21), 12);
    expect([other.magnitudes[0], other.phasesRad[3]]).toEqual([expect.closeTo(20 ** 1.5, 10), power.phasesRad[120]]);
  });
});

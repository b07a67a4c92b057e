import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  averageDissipationW,
  dissipationFactor,
  peakDissipationOhm,
  ratedImpedanceCheck,
  worstAverageDissipationW,
  worstSwing,
} from '../../../../src/core/circuit/load/index.ts';

const anyAngle = fc.double({ min: -1.57, max: 1.57, noNaN: true });
const STEPS = 20000;
/** Power in the two devices over one period at a swing of `peakV`, by the instant: the conducting one holds rail less output. */
const powers = (railV: number, peakV: number, absOhm: number, angleRad: number): number[] =>
  Array.from({ length: STEPS }, (_, n) => {
    const theta = (2 * Math.PI * n) / STEPS;
    const current = (peakV / absOhm) * Math.cos(theta - angleRad);
    const held = current >= 0 ? railV - peakV * Math.cos(theta) : railV + peakV * Math.cos(theta);
    return held * Math.abs(current);
  });

describe('equivalent peak dissipation resistance', () => {
  it('is as in the table of the closed form', () => {
    const degrees = [0, 15, 30, 45, 60, 75, 90];
    const table = [1, 0.662, 0.471, 0.354, 0.278, 0.227, 0.192];
    degrees.forEach((deg, n) => {
      expect(dissipationFactor((deg * Math.PI) / 180)).toBeCloseTo(table[n]!, 3);
    });
  });
  it('is what a search through one period finds (seed 61)', () => {
    fc.assert(
      fc.property(anyAngle, (angle) => {
        const worst = Math.max(...powers(1, 1, 1, angle));
        // 20 000 steps place the top within 4e-9 of it.
        expect(1 / (4 * worst) / dissipationFactor(angle)).toBeCloseTo(1, 7);
      }),
      { seed: 61, numRuns: 40 },
    );
  });
  it('does not care for the sign of the angle and never exceeds the modulus (seed 62)', () => {
    fc.assert(
      fc.property(anyAngle, fc.double({ min: 0.1, max: 100, noNaN: true }), (angle, ohm) => {
        const both = { re: Float64Array.of(ohm * Math.cos(angle)), im: Float64Array.of(ohm * Math.sin(angle)) };
        const found = peakDissipationOhm(both)[0]!;
        expect(found).toBeLessThanOrEqual(ohm * (1 + 1e-12));
        expect(peakDissipationOhm({ re: both.re, im: both.im.map((x) => -x) })[0]).toBe(found);
      }),
      { seed: 62 },
    );
  });
});

describe('average dissipation', () => {
  it('is at worst 2V²/(π²R) for a resistor, as textbooks have it', () => {
    expect(worstAverageDissipationW({ railV: 40, absOhm: 8, angleRad: 0 })).toBeCloseTo(
      (2 * 1600) / (Math.PI ** 2 * 8),
      9,
    );
    expect(worstSwing(0)).toBeCloseTo(2 / Math.PI, 12);
    expect(worstSwing(1.2)).toBe(1);
  });
  it('is the mean over one period, instant by instant (seed 63)', () => {
    fc.assert(
      fc.property(anyAngle, fc.double({ min: 0.05, max: 1, noNaN: true }), (angle, swing) => {
        const mean = powers(40, 40 * swing, 6, angle).reduce((sum, p) => sum + p, 0) / STEPS;
        expect(averageDissipationW({ railV: 40, absOhm: 6, angleRad: angle }, 40 * swing) / mean).toBeCloseTo(1, 5);
      }),
      { seed: 63, numRuns: 40 },
    );
  });
  it('is no less at the worst swing than at any other (seed 64)', () => {
    fc.assert(
      fc.property(anyAngle, fc.double({ min: 0, max: 1, noNaN: true }), (angleRad, swing) => {
        const stage = { railV: 30, absOhm: 4, angleRad };
        expect(averageDissipationW(stage, 30 * swing)).toBeLessThanOrEqual(worstAverageDissipationW(stage) + 1e-9);
      }),
      { seed: 64 },
    );
  });
});

describe('rated impedance', () => {
  const impedance = { re: Float64Array.of(1, 6.4, 9, 3), im: Float64Array.of(0, 0, 2, 0) };
  const frequenciesHz = Float64Array.of(5, 200, 1000, 40000);
  it('looks at the rated band alone and asks for 80 %', () => {
    expect(ratedImpedanceCheck(impedance, frequenciesHz, 8, [20, 20000])).toMatchObject({
      leastOhm: 6.4,
      atHz: 200,
      allowedOhm: 6.4,
      greatestRatedOhm: 8,
      passes: true,
    });
    expect(ratedImpedanceCheck(impedance, frequenciesHz, 8, [20, 50000])).toMatchObject({ leastOhm: 3, passes: false });
    expect(ratedImpedanceCheck(impedance, frequenciesHz, 8, [300, 400])).toBeNull();
  });
});

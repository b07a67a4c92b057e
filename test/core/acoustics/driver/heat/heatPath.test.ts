import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  COIL_METALS,
  coilHeatCapacityJPerK,
  type HeatPath,
  heatResistanceKPerW,
  heatResponseKPerW,
  hotCoilLossDb,
  hotResistanceRatio,
  temperatureRiseK,
} from '../../../../../src/core/acoustics/index.ts';
import { rungeKutta } from './rungeKutta.ts';

const path: HeatPath = [
  { resistanceKPerW: 3, timeConstantS: 8 },
  { resistanceKPerW: 2.2, timeConstantS: 2400 },
];

describe('hot resistance', () => {
  it('copper 180 K up: +71 % and 4.65 dB', () => {
    // Published: "about 72 %, 4.7 dB" for 180 K, an encyclopaedia's article on power compression; 0.4 is its rounding of α.
    expect(hotResistanceRatio(180, COIL_METALS.copper.alphaPerK)).toBeCloseTo(1.7074, 10);
    expect(hotCoilLossDb(180, 0.004)).toBeCloseTo(4.7, 1);
  });
  it('50 to 250 K cost 1.6, 2.9, 4.0, 5.0, 5.9 dB', () => {
    const losses = [50, 100, 150, 200, 250].map((riseK) => Number(hotCoilLossDb(riseK, 0.00393).toFixed(1)));
    expect(losses).toEqual([1.6, 2.9, 4, 5, 5.9]);
  });
  it('a gram of copper holds 0.385 J/K', () => {
    expect(coilHeatCapacityJPerK(0.001, 'copper')).toBeCloseTo(0.385, 12);
  });
});

describe('temperatureRiseK', () => {
  it('agrees with Kirchhoff’s law of heat in the Foster network, stepped in time', () => {
    // Two capacities, each beside its resistance, in series: C dT/dt = P - T/R.
    const capacities = path.map(({ resistanceKPerW, timeConstantS }) => timeConstantS / resistanceKPerW);
    const slopes = (temperatures: readonly number[]): number[] =>
      temperatures.map((t, i) => (20 - t / path[i]!.resistanceKPerW) / capacities[i]!);
    for (const timeS of [1, 10, 60, 600]) {
      const stepped = rungeKutta(slopes, [0, 0], timeS, 4000);
      // Fourth order, 0.15 s steps against 8 s at most: 1e-8.
      expect(temperatureRiseK(20, path, timeS) / (stepped[0]! + stepped[1]!)).toBeCloseTo(1, 7);
    }
  });

  it('stays within 2 R2 τ1/(R1 τ2) of the chain coil, magnet, air with the same elements', () => {
    for (const [resistanceKPerW, times] of [
      [2.2, 50],
      [3, 50],
      [6, 50],
      [2.2, 300],
    ] as const) {
      const read: HeatPath = [
        { resistanceKPerW: 3, timeConstantS: 10 },
        { resistanceKPerW, timeConstantS: 10 * times },
      ];
      const [coil, magnet] = [10 / 3, (10 * times) / resistanceKPerW];
      const slopes = ([a, b]: readonly number[]): number[] => [
        (1 - (a! - b!) / 3) / coil,
        ((a! - b!) / 3 - b! / resistanceKPerW) / magnet,
      ];
      let worst = 0;
      for (const timeS of [3, 10, 20, 30, 60, 120, 300, 600, 1200, 3000]) {
        const [chain] = rungeKutta(slopes, [0, 0], timeS, 4000);
        worst = Math.max(worst, Math.abs(heatResponseKPerW(read, timeS) / chain! - 1));
      }
      const bound = (2 * resistanceKPerW) / 3 / times;
      expect(worst).toBeLessThan(bound);
      // The two forms do differ: the check sees what it is meant to see.
      expect(worst).toBeGreaterThan(0.8 * bound);
    }
  });

  it('starts with the power over the capacities, ends at the sum of the resistances', () => {
    expect(heatResponseKPerW(path, 1e-6) / (1e-6 * (3 / 8 + 2.2 / 2400))).toBeCloseTo(1, 6);
    expect(heatResponseKPerW(path, Number.POSITIVE_INFINITY)).toBe(heatResistanceKPerW(path));
    expect(heatResponseKPerW(path, 0)).toBeCloseTo(0, 15);
  });

  it('is proportional to power and rises with time (seed 71)', () => {
    const term = fc.record({
      resistanceKPerW: fc.double({ min: 0.3, max: 12, noNaN: true }),
      timeConstantS: fc.double({ min: 0.5, max: 5000, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(term, { minLength: 1, maxLength: 3 }),
        fc.double({ min: 0.1, max: 1e4, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        (terms, timeS, powerW) => {
          const once = temperatureRiseK(powerW, terms, timeS);
          expect(temperatureRiseK(3 * powerW, terms, timeS) / once).toBeCloseTo(3, 10);
          expect(temperatureRiseK(powerW, terms, 1.1 * timeS)).toBeGreaterThanOrEqual(once);
          expect(once).toBeLessThanOrEqual(powerW * heatResistanceKPerW(terms) * (1 + 1e-12));
        },
      ),
      { seed: 71 },
    );
  });
});

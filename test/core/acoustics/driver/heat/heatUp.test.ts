import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  equilibriumRiseK,
  type HeatPath,
  heatResistanceKPerW,
  heatUp,
  hotCoilOhm,
  temperatureRiseK,
} from '../../../../../src/core/acoustics/index.ts';
import { rungeKutta } from './rungeKutta.ts';

const ALPHA = 0.00393;
const path: HeatPath = [
  { resistanceKPerW: 3.2, timeConstantS: 9 },
  { resistanceKPerW: 1.9, timeConstantS: 1800 },
];

describe('equilibriumRiseK', () => {
  it('balances what the hot coil takes with what it sheds (seed 72)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 2, max: 16, noNaN: true }),
        fc.double({ min: 0.5, max: 15, noNaN: true }),
        (voltageV, coldOhm, resistanceKPerW) => {
          const riseK = equilibriumRiseK(voltageV ** 2 / coldOhm, resistanceKPerW, ALPHA);
          expect((voltageV ** 2 / hotCoilOhm(coldOhm, riseK, ALPHA)) * resistanceKPerW).toBeCloseTo(riseK, 6);
        },
      ),
      { seed: 72 },
    );
  });
  it('is the linear rise where the metal’s resistance does not move, and for faint power', () => {
    expect(equilibriumRiseK(30, 4, 0)).toBe(120);
    expect(equilibriumRiseK(1e-9, 4, ALPHA) / 4e-9).toBeCloseTo(1, 8);
  });
});

describe('heatUp', () => {
  it('under constant power is the sum of exponentials, to rounding', () => {
    for (const timeS of [0.5, 20, 7200]) {
      expect(heatUp([path], () => [25], timeS)[0]! / temperatureRiseK(25, path, timeS)).toBeCloseTo(1, 12);
    }
  });

  it('on a voltage source stays within 0.1 % of small fourth-order steps', () => {
    const coldW = 80;
    const power = (riseK: number): number => coldW / (1 + ALPHA * riseK);
    for (const timeS of [2, 10, 60, 600, 7200]) {
      const [riseK] = heatUp([path], ([rise]) => [power(rise!)], timeS);
      const terms = rungeKutta(
        (state) =>
          state.map((x, i) => (path[i]!.resistanceKPerW * power(state[0]! + state[1]!) - x) / path[i]!.timeConstantS),
        [0, 0],
        timeS,
        20000,
      );
      expect(Math.abs(riseK! / (terms[0]! + terms[1]!) - 1)).toBeLessThan(1e-3);
    }
  });

  it('comes to rest at the equilibrium', () => {
    const [riseK] = heatUp([path], ([rise]) => [80 / (1 + ALPHA * rise!)], 20 * 1800);
    expect(riseK! / equilibriumRiseK(80, heatResistanceKPerW(path), ALPHA)).toBeCloseTo(1, 4);
  });

  it('keeps coils that share their power apart', () => {
    // Two coils in series on a current: each takes its own resistance's share.
    const [first, second] = heatUp([path, path], () => [10, 30], 100);
    expect(second! / first!).toBeCloseTo(3, 12);
  });
});

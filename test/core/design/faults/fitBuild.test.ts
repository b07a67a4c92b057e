import { describe, expect, it } from 'vitest';
import { solverOf, startFrom } from '../../../../src/core/design/faults/candidate.ts';
import { fitBuild } from '../../../../src/core/design/faults/fitBuild.ts';
import { rebuilt } from '../../../../src/core/design/faults/hypothesis.ts';
import type { ImpedanceData } from '../../../../src/core/design/faults/impedanceData.ts';
import { unknownKey } from '../../../../src/core/design/faults/unknown.ts';
import { choleskyFactor, choleskySolve } from '../../../../src/core/math/cholesky.ts';
import { randomStream } from '../../../../src/core/math/index.ts';
import { demoHypothesis } from './demoBuild.ts';

const SEED = 90210;
const NOISE = 0.01;

/** Readings of a build with given values, with noise of 1 % and 0.01 rad. */
function taken(
  hypothesis: ReturnType<typeof demoHypothesis>['healthy'],
  logs: Float64Array,
  seed: number,
  noise = NOISE,
): ImpedanceData {
  const random = randomStream(seed);
  const { re, im } = solverOf(hypothesis).solve(logs).z;
  return {
    omegas: hypothesis.build.omegas,
    logSizes: re.map((x, f) => Math.log(Math.hypot(x, im[f]!)) + noise * random.normal()),
    phasesRad: re.map((x, f) => Math.atan2(im[f]!, x) + noise * random.normal()),
    noise,
  };
}

describe('the fit of a build', () => {
  it('costs what the misfit comes to under noise plus tolerance covariance, to first order', () => {
    const { healthy } = demoHypothesis('kitchen-shelf', 30);
    // Tolerances so small that all is linear.
    const unknowns = healthy.unknowns.map((unknown) => ({ ...unknown, sdLog: unknown.sdLog / 30 }));
    const linear = { ...healthy, unknowns };
    const random = randomStream(SEED);
    const logs = Float64Array.from(unknowns, ({ sdLog }) => sdLog * random.normal());
    const data = taken(linear, logs, SEED, NOISE / 30);
    const solver = solverOf(linear);
    const zero = startFrom(linear, new Map());
    const { z, slopes } = solver.solve(zero);
    const count = data.omegas.length;
    const misses = new Float64Array(2 * count);
    const rows = slopes.map(({ re, im }) => [...re, ...im]);
    for (let f = 0; f < count; f++) {
      misses[f] = data.logSizes[f]! - Math.log(Math.hypot(z.re[f]!, z.im[f]!));
      misses[count + f] = data.phasesRad![f]! - Math.atan2(z.im[f]!, z.re[f]!);
    }
    const size = 2 * count;
    const covariance = new Float64Array(size * size);
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) {
        let sum = i === j ? data.noise ** 2 : 0;
        unknowns.forEach(({ sdLog }, k) => {
          sum += rows[k]![i]! * rows[k]![j]! * sdLog ** 2;
        });
        covariance[i * size + j] = sum;
      }
    }
    const solved = choleskySolve(choleskyFactor(covariance, size, 1e-14)!, size, misses);
    const expected = misses.reduce((sum, miss, i) => sum + miss * solved[i]!, 0);
    const fit = fitBuild(solver, data, { from: zero, mostSteps: 20 });
    // What is left beyond first order, some parts in a hundred of a spread.
    expect(Math.abs(fit.cost / expected - 1)).toBeLessThan(0.02);
  });

  it(`finds a wrong value and how sure it is: 60 draws, seed ${SEED}`, () => {
    const { model, healthy } = demoHypothesis('kitchen-shelf', 60);
    const wrong = rebuilt(healthy, [{ kind: 'part-value', partId: 'C2' }], model);
    const at = wrong.unknowns.findIndex((unknown) => unknownKey(unknown) === 'part C2 farad');
    let within = 0;
    for (let k = 0; k < 60; k++) {
      const random = randomStream(SEED + k);
      const logs = Float64Array.from(healthy.unknowns, ({ sdLog }) => sdLog * random.normal());
      logs[at] = Math.log(2);
      const from = startFrom(wrong, new Map());
      from[at] = 0.5;
      const fit = fitBuild(solverOf(wrong), taken(healthy, logs, SEED + k), { from, mostSteps: 20 });
      expect(fit.converged).toBe(true);
      if (Math.abs(fit.logs[at]! - Math.log(2)) < 1.96 * fit.sdLogs[at]!) within++;
    }
    // 57 expected of 60, binomial deviation 1.7: three of them.
    expect(within).toBeGreaterThanOrEqual(51);
  });

  it('ends where it is when its first step promises too little', () => {
    const { healthy } = demoHypothesis('port-lesson', 40);
    const from = startFrom(healthy, new Map());
    const far = Float64Array.from(from, () => 0.4);
    const fit = fitBuild(solverOf(healthy), taken(healthy, far, SEED), { from, mostSteps: 9, hopelessAbove: 1 });
    expect(fit.converged).toBe(false);
    expect([...fit.logs]).toEqual([...from]);
  });
});

import { describe, expect, it } from 'vitest';
import { Effort } from '../../../../src/core/design/optimise/effort.ts';
import { exchange } from '../../../../src/core/design/optimise/exchange.ts';
import { SQUARES } from '../../../../src/core/design/optimise/fitPoint.ts';
import {
  boundsAround,
  type FitProblem,
  NO_LIMITS,
  preferredChoices,
  roundedValues,
} from '../../../../src/core/design/optimise/index.ts';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import { targetFor } from '../../../../src/core/design/targets/index.ts';
import { crossoverTrial } from '../../../../src/core/design/trial/index.ts';
import { randomStream } from '../../../../src/core/math/randomStream.ts';
import { succeeded } from '../../circuit/solved.ts';
import { twoWay } from '../../speaker/fixture.ts';

const frequenciesHz = sweepGrid(100, 15000, 30);
const trial = succeeded(crossoverTrial({ model: twoWay, frequenciesHz }));
const flat = { levelDb: null, tiltDbPerOctave: 0, pivotHz: 1000, highPass: null, lowPass: null };
const problem: FitProblem = {
  trial,
  targets: [targetFor({ kind: 'sum', points: [0] }, flat, [{ fromHz: 200, toHz: 12000, weight: 1 }], frequenciesHz)],
  bounds: boundsAround(trial, 4),
  limits: NO_LIMITS,
};
const choices = succeeded(
  preferredChoices(trial, problem.bounds, { resistor: 'E6', capacitor: 'E12', inductor: 'E12' }),
);

describe('exchange', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'ends where neither one part nor two can be changed for better (start %d)',
    (seed) => {
      const random = randomStream(seed);
      const start = roundedValues(
        trial.start.map((value) => value * 2 ** (2 * random.uniform() - 1)),
        choices,
      );
      const effort = new Effort(problem, 'rms', {});
      const merit = (values: Float64Array): number => {
        const point = effort.at(values, { multipliers: null, norm: SQUARES, withJacobian: false });
        return effort.merit(point!.scored);
      };
      const before = merit(start);
      const { values } = exchange(effort, start, choices, null)!;
      const least = merit(values) - 1e-8;
      expect(least).toBeLessThan(before);
      const place = Array.from(values, (value, i) => choices[i]!.indexOf(value));
      const stepped = (steps: readonly (readonly [number, number])[]): Float64Array | null => {
        const next = values.slice();
        for (const [i, by] of steps) {
          const value = choices[i]![place[i]! + by];
          if (value === undefined) return null;
          next[i] = value;
        }
        return next;
      };
      const neighbours = place.flatMap((_, i) => [
        ...[-2, -1, 1, 2].map((by) => stepped([[i, by]])),
        ...place.slice(0, i).flatMap((_, j) =>
          [-1, 1].flatMap((a) =>
            [-1, 1].map((b) =>
              stepped([
                [i, a],
                [j, b],
              ]),
            ),
          ),
        ),
      ]);
      for (const next of neighbours) if (next !== null) expect(merit(next)).toBeGreaterThan(least);
    },
  );
});

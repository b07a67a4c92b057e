import { describe, expect, it } from 'vitest';
import { meritOf, NO_LIMITS, optimise, preferredChoices } from '../../../../src/core/design/optimise/index.ts';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import type { Target } from '../../../../src/core/design/targets/index.ts';
import {
  crossoverTrial,
  isValued,
  partValue,
  type TrialCurve,
  trialLevelsDb,
  tryValues,
  withValue,
} from '../../../../src/core/design/trial/index.ts';
import { randomStream } from '../../../../src/core/math/randomStream.ts';
import { succeeded } from '../../circuit/solved.ts';
import { randomCrossover } from './randomCrossover.ts';

const frequenciesHz = sweepGrid(80, 18000, 70);
const fineHz = sweepGrid(80, 18000, 400);
const curve: TrialCurve = { kind: 'sum', points: [0] };

/** A random design, the response made with it, and the same network with every value up to 2.5 times off. */
function puzzle(seed: number) {
  const random = randomStream(seed);
  const model = randomCrossover(random);
  const detuned = {
    ...model,
    parts: model.parts.map((part) =>
      isValued(part) ? withValue(part, partValue(part) * 2.5 ** (2 * random.uniform() - 1)) : part,
    ),
  };
  const truth = succeeded(crossoverTrial({ model, frequenciesHz }));
  const levelsDb = trialLevelsDb(succeeded(tryValues(truth, truth.start)), curve);
  const trial = succeeded(crossoverTrial({ model: detuned, frequenciesHz }));
  const target: Target = { curve, levelsDb, levelIsFree: false, weights: levelsDb.map(() => 1) };
  const bounds = Array.from(trial.start, (value) => ({ least: value / 12, greatest: value * 12 }));
  return { model, detuned, trial, problem: { trial, targets: [target], bounds, limits: NO_LIMITS } };
}

const seeds = Array.from({ length: 20 }, (_, i) => 4100 + i);

describe('a known filter is recovered from a response made with it', () => {
  it.each(seeds)('to 0.05 dB of the sum everywhere, from values up to 2.5 times off (seed %d)', (seed) => {
    const { model, detuned, problem } = puzzle(seed);
    const { start, continuous, ending } = succeeded(
      optimise(problem, { starts: 30, seed, criterion: 'rms', choices: null }),
    );
    expect(start.greatestDb).toBeGreaterThan(1);
    expect(continuous.greatestDb).toBeLessThan(0.05);
    expect(ending.kind).toBe('converged');
    // Between the frequencies that were looked at as well.
    const [truth, found] = [model, detuned].map((one) =>
      succeeded(crossoverTrial({ model: one, frequenciesHz: fineHz })),
    );
    const levels = trialLevelsDb(succeeded(tryValues(truth!, truth!.start)), curve);
    const ours = trialLevelsDb(succeeded(tryValues(found!, continuous.values)), curve);
    expect(Math.max(...levels.map((level, f) => Math.abs(level - ours[f]!)))).toBeLessThan(0.05);
  });
});

describe('with preferred values it never ends worse than plain rounding', () => {
  it('20 of 20 designs in E12, most of them better by far', () => {
    const gains = seeds.map((seed) => {
      const { trial, problem } = puzzle(seed);
      const stocks = { resistor: 'E12', capacitor: 'E12', inductor: 'E12' } as const;
      const choices = succeeded(preferredChoices(trial, problem.bounds, stocks));
      const { rounded, preferred, proof } = succeeded(
        optimise(problem, { starts: 30, seed, criterion: 'rms', choices }),
      );
      preferred!.values.forEach((value, i) => {
        expect(choices[i]).toContain(value);
      });
      expect(proof).not.toBeNull();
      return meritOf(preferred!, 'rms') / meritOf(rounded!, 'rms');
    });
    expect(gains.filter((gain) => gain > 1)).toEqual([]);
    expect(gains.filter((gain) => gain < 0.8).length).toBeGreaterThanOrEqual(10);
  });
});

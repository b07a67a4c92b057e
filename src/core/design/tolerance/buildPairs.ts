import { type Result, succeed } from '../../messages/problem.ts';
import { type CrossoverTrial, type TrialCurve, type Tried, trialLevelsDb, tryValues } from '../trial/index.ts';
import { drawPair } from './drawPair.ts';
import type { ToleranceSpec } from './toleranceSpec.ts';

/** Levels of built loudspeakers less those of the nominal one. */
export interface BuiltPairs {
  /** Number of the first pair, and how many were built: fewer than asked for where it was stopped. */
  readonly first: number;
  readonly pairs: number;
  readonly wasStopped: boolean;
  readonly frequencyCount: number;
  /** dB; rows of `frequencyCount`: left and right of the first pair, left and right of the next. */
  readonly departuresDb: Float32Array;
}

export interface BuildOptions {
  readonly first: number;
  readonly pairs: number;
  readonly onProgress?: (done: number, of: number) => void;
  readonly shouldStop?: () => boolean;
}

/** Pairs between two looks at whether to stop. */
const LOOK_EVERY = 25;

/**
 * Builds pairs of loudspeakers from random parts and works out what each sounds like. Pairs of different numbers may be built
 * anywhere: the outcome depends on the seed and the number alone. Problems: as `solveCircuit`.
 * @example buildPairs(trial, spec, { kind: 'sum', points: [0] }, { first: 0, pairs: 5000 })
 */
export function buildPairs(
  trial: CrossoverTrial,
  spec: ToleranceSpec,
  curve: TrialCurve,
  { first, pairs, onProgress, shouldStop }: BuildOptions,
): Result<BuiltPairs> {
  const frequencyCount = trial.frequenciesHz.length;
  const departuresDb = new Float32Array(2 * pairs * frequencyCount);
  const nominal = tryValues(trial, trial.start);
  if (!nominal.ok) return nominal;
  const nominalDb = trialLevelsDb(nominal.value, curve);
  let tried: Tried | undefined;
  let done = 0;
  let wasStopped = false;
  while (done < pairs && !wasStopped) {
    const drawn = drawPair(trial, spec, first + done);
    for (const [side, values] of [drawn.left, drawn.right].entries()) {
      const next = tryValues(trial, values, tried);
      if (!next.ok) return next;
      tried = next.value;
      const levelsDb = trialLevelsDb(tried, curve);
      const at = (2 * done + side) * frequencyCount;
      for (let f = 0; f < frequencyCount; f++) departuresDb[at + f] = levelsDb[f]! - nominalDb[f]!;
    }
    done++;
    if (done % LOOK_EVERY !== 0) continue;
    onProgress?.(done, pairs);
    wasStopped = done < pairs && shouldStop?.() === true;
  }
  return succeed({
    first,
    pairs: done,
    wasStopped,
    frequencyCount,
    departuresDb: departuresDb.subarray(0, 2 * done * frequencyCount),
  });
}

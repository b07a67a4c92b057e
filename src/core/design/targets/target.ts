import type { TrialCurve } from '../trial/index.ts';
import { bandWeights, type WeightBand } from './bandWeights.ts';
import { type TargetShape, targetLevelsDb } from './targetShape.ts';

/** A curve with what it should be, on the frequencies of a trial. */
export interface Target {
  readonly curve: TrialCurve;
  readonly levelsDb: Float64Array;
  /** The mean error, weighted, does not count. */
  readonly levelIsFree: boolean;
  /** Of the squared error at each frequency; 0 where it does not count. */
  readonly weights: Float64Array;
}

/**
 * A target by shape and bands.
 * @example targetFor({ kind: 'sum', points: [0] }, flat, [{ fromHz: 200, toHz: 10000, weight: 1 }], frequenciesHz)
 */
export const targetFor = (
  curve: TrialCurve,
  shape: TargetShape,
  bands: readonly WeightBand[],
  frequenciesHz: Float64Array,
): Target => ({
  curve,
  levelsDb: targetLevelsDb(shape, frequenciesHz),
  levelIsFree: shape.levelDb === null,
  weights: bandWeights(bands, frequenciesHz),
});

import { interpolateLogInto } from '../../math/index.ts';
import {
  type DifferenceOptions,
  type Judgement,
  judgeDifference,
  type LevelCurve,
  type LevelDifference,
  levelDifference,
} from '../../measured/index.ts';

/** How far the prediction may be off, dB to either side, over frequency: of parts, drivers and the measurement. */
export interface ToleranceBand {
  readonly frequenciesHz: ArrayLike<number>;
  readonly belowDb: ArrayLike<number>;
  readonly aboveDb: ArrayLike<number>;
}

export interface PredictionCheck {
  /** Measured less predicted. */
  readonly difference: LevelDifference;
  /** The tolerance at the same frequencies; below as a positive number. */
  readonly belowDb: Float64Array;
  readonly aboveDb: Float64Array;
  /** Share of the octaves that lie inside, 0 to 1. */
  readonly insideShare: number;
  /** Against a window of ±1 dB after the tolerance has been taken off: what neither tolerance nor a decibel of measuring explains. */
  readonly beyond: Judgement;
}

const MEASURING_DB = 1;

/**
 * Measured less predicted level over the band that both cover, judged against the tolerance of the design; null where they share too little.
 *
 * `options` as in `levelDifference`: align where the microphone's gain is not known. Example: predictionCheck(measured, predicted, band, { fraction: 12, alignHz: null })
 */
export function predictionCheck(
  measured: LevelCurve,
  predicted: LevelCurve,
  band: ToleranceBand,
  options: DifferenceOptions,
): PredictionCheck | null {
  const difference = levelDifference(measured, predicted, options);
  if (difference === null) return null;
  const { frequenciesHz, differenceDb } = difference;
  const [belowDb, aboveDb] = [band.belowDb, band.aboveDb].map((values) => {
    const out = new Float64Array(frequenciesHz.length);
    interpolateLogInto(out, frequenciesHz, band.frequenciesHz, values);
    return out;
  });
  const left = differenceDb.map((db, i) => (db > 0 ? Math.max(0, db - aboveDb![i]!) : Math.min(0, db + belowDb![i]!)));
  const inside = left.reduce((count, db) => count + (db === 0 ? 1 : 0), 0);
  const window = [{ fromHz: 0, toHz: Number.MAX_VALUE, limitDb: MEASURING_DB }];
  return {
    difference,
    belowDb: belowDb!,
    aboveDb: aboveDb!,
    insideShare: inside / left.length,
    beyond: judgeDifference({ ...difference, differenceDb: left }, window),
  };
}

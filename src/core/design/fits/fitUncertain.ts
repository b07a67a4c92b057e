import { leastSquares, residualStatistics } from '../../math/index.ts';

/** A value that may be off: its nominal, and how far it may reasonably lie from it (one standard deviation). */
export interface UncertainValue {
  readonly id: string;
  readonly nominal: number;
  /** 'relative': of ln of the value (a part of 5 % that is a limit has about 0.03); 'absolute': in the value's own unit. */
  readonly spread: { readonly kind: 'relative' | 'absolute'; readonly sd: number };
}

/** Levels in dB at a list of frequencies for a list of values, in the order of `UncertainValue`s. */
export type Prediction = (values: Float64Array) => ArrayLike<number>;

export interface MovedValue {
  readonly id: string;
  readonly nominal: number;
  readonly value: number;
  /** How far it moved in its own spreads; beyond about 3 the spread does not explain it. */
  readonly movedBySds: number;
  /** Deviation that is left after the fit, over the spread before: near 1 the measurement says nothing about it. */
  readonly remaining: number;
}

export interface UncertainFit {
  readonly values: readonly MovedValue[];
  /** Root mean square of measured less predicted before and after, dB. */
  readonly beforeDb: number;
  readonly afterDb: number;
  readonly residualsDb: Float64Array;
  readonly converged: boolean;
  readonly iterations: number;
}

/** Beyond this many spreads nothing is looked for. */
const REACH = 6;

/**
 * Moves only what is uncertain (level, acoustic centre, parts within their tolerance) until the prediction meets the measurement as
 * well as it may: least squares of the level's misfit in units of `noiseDb` and of each value's move in units of its spread.
 *
 * So a value moves far only where the measurement insists, and what cannot be told stays where it was. `noiseDb`: deviation of one
 * point, correlated neighbours counted (for smoothed curves take more). Throws a RangeError where the lists do not fit together.
 * Source: least squares with prior knowledge (maximum a posteriori for normal errors), from memory.
 *
 * Example: fitUncertain(levelsDb, predict, [{ id: 'level', nominal: 0, spread: { kind: 'absolute', sd: 3 } }], 0.5)
 */
export function fitUncertain(
  measuredDb: ArrayLike<number>,
  predict: Prediction,
  uncertain: readonly UncertainValue[],
  noiseDb: number,
): UncertainFit {
  const n = measuredDb.length;
  const nominal = Float64Array.from(uncertain, (value) => value.nominal);
  const before = misfit(measuredDb, predict(nominal));
  // Walked in units of the spread: 0 is the nominal.
  const valuesAt = (moves: Float64Array): Float64Array =>
    Float64Array.from(uncertain, ({ nominal: from, spread: { kind, sd } }, j) =>
      kind === 'relative' ? from * Math.exp(sd * moves[j]!) : from + sd * moves[j]!,
    );
  const fit = leastSquares(
    {
      count: n + uncertain.length,
      // The residuals are in units of their deviations.
      variance: 'known',
      parameters: uncertain.map(() => ({
        start: 0,
        least: -REACH,
        greatest: REACH,
        scale: 'linear' as const,
        size: 1,
      })),
      residualsInto: (out, moves) => {
        const levels = predict(valuesAt(moves));
        for (let i = 0; i < n; i++) out[i] = (measuredDb[i]! - levels[i]!) / noiseDb;
        for (let j = 0; j < uncertain.length; j++) out[n + j] = moves[j]!;
      },
    },
    100,
  );
  const found = valuesAt(fit.values);
  const residualsDb = misfit(measuredDb, predict(found));
  const count = uncertain.length;
  return {
    values: uncertain.map(({ id, nominal: from }, j) => {
      const variance = fit.covariance === null ? 1 : fit.covariance[j * count + j]!;
      return {
        id,
        nominal: from,
        value: found[j]!,
        movedBySds: fit.values[j]!,
        remaining: Math.min(1, Math.sqrt(variance)),
      };
    }),
    beforeDb: residualStatistics(before).rms,
    afterDb: residualStatistics(residualsDb).rms,
    residualsDb,
    converged: fit.converged,
    iterations: fit.iterations,
  };
}

function misfit(measuredDb: ArrayLike<number>, levelsDb: ArrayLike<number>): Float64Array {
  if (levelsDb.length !== measuredDb.length) throw new RangeError('Prediction and measurement have one length.');
  return Float64Array.from(measuredDb, (db, i) => db - levelsDb[i]!);
}

import type { LeastSquaresFit } from './leastSquares.ts';
import { studentQuantile } from './studentQuantile.ts';

/** A fitted value with the ends of its interval: 95 % for all values of the fit together. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Standard deviation of ln of the value. */
  readonly relativeSd: number;
}

export const CONFIDENCE = 0.95;
/** ln of the widest interval that is stated: nothing is known then, and the ends stay numbers. */
const WIDEST = 30;

/**
 * An estimate from a value above 0, its relative deviation and the degrees of freedom that this was found with.
 *
 * `together`: the number of values that are to lie in their intervals all at once in 95 of 100 cases; each then has 1 − 0.05/together.
 * Source: O. J. Dunn, Multiple comparisons among means, JASA 56 (1961) 52 (from memory).
 */
export const estimateOf = (value: number, relativeSd: number, freedom: number, together: number): Estimate => {
  const reach = Math.exp(Math.min(WIDEST, studentQuantile(1 - (1 - CONFIDENCE) / together, freedom) * relativeSd));
  return { value, low: value / reach, high: value * reach, relativeSd };
};

/**
 * Estimate of a quantity above 0 that follows from a fit: 95 % for all its free parameters together, Student's quantile, all
 * correlations included.
 *
 * `slopes` are d ln(value)/d(coordinate) for each parameter of the fit, the coordinate being ln p or p as it was walked. `inflation`
 * multiplies the deviation. Null where the data do not fix the parameters together, or a parameter that counts rests on a bound.
 * Source: linear propagation of the covariance; exact for products of powers in the linearised model.
 * Example: fitEstimate(fit, fit.values[0], [1, 0]) is the first parameter.
 */
export const fitEstimate = (
  fit: Pick<LeastSquaresFit, 'covariance' | 'freedom' | 'held'>,
  value: number,
  slopes: readonly number[],
  inflation = 1,
): Estimate | null => {
  const { covariance, freedom, held } = fit;
  if (covariance === null || slopes.some((slope, j) => slope !== 0 && held[j])) return null;
  const n = held.length;
  let variance = 0;
  slopes.forEach((a, i) => {
    slopes.forEach((b, j) => {
      variance += a * b * covariance[i * n + j]!;
    });
  });
  const together = held.filter((is) => !is).length;
  return estimateOf(value, inflation * Math.sqrt(Math.max(0, variance)), freedom, together);
};

import { chiSquareTail } from './chiSquareTail.ts';

/**
 * Schwarz's criterion of a least-squares fit, n ln(RSS/n) + k ln n: the lower, the better; a constant of the data is left out.
 *
 * n residuals of independent normal noise of unknown size, k fitted parameters.
 * Source: G. Schwarz, Ann. Statist. 6 (1978) 461.
 */
export const schwarzCriterion = (count: number, sumOfSquares: number, parameters: number): number =>
  count * Math.log(sumOfSquares / count) + parameters * Math.log(count);

/** Criteria less the least of them, and the weight exp(−Δ/2) of each model, sum 1. Source: R. E. Kass and A. E. Raftery, JASA 90 (1995) 773. */
export const schwarzWeights = (
  criteria: readonly number[],
): { readonly differences: number[]; readonly weights: number[] } => {
  const least = Math.min(...criteria);
  const differences = criteria.map((value) => value - least);
  const odds = differences.map((difference) => Math.exp(-difference / 2));
  const sum = odds.reduce((a, b) => a + b, 0);
  return { differences, weights: odds.map((value) => value / sum) };
};

/**
 * Likelihood ratio of two nested models, n ln(RSS₁/RSS₂), and the probability that noise alone makes it as large.
 *
 * `parameters`: how many the simpler and the richer model have. Source: S. S. Wilks, Ann. Math. Statist. 9 (1938) 60.
 * Example: 62 residuals, 0.0121 with 5 parameters, 0.0089 with 6: 19.04, 1.3e-5
 */
export const likelihoodRatio = (
  count: number,
  simplerSum: number,
  richerSum: number,
  parameters: { readonly from: number; readonly to: number },
): { readonly statistic: number; readonly probability: number } => {
  const statistic = count * Math.log(simplerSum / richerSum);
  return { statistic, probability: chiSquareTail(Math.max(0, statistic), parameters.to - parameters.from) };
};

import { logGamma } from './logGamma.ts';

const MOST_TERMS = 500;

/** Γ(a, x)/Γ(a): series below a + 1, continued fraction (modified Lentz) above. */
const upperGamma = (a: number, x: number): number => {
  const factor = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; n < MOST_TERMS && term > 1e-17 * sum; n++) {
      term *= x / (a + n);
      sum += term;
    }
    return 1 - factor * sum;
  }
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const share = -n * (n - a);
    b += 2;
    d = 1 / (share * d + b);
    c = b + share / c;
    const change = c * d;
    value *= change;
    if (Math.abs(change - 1) < 1e-16) break;
  }
  return factor * value;
};

/**
 * Probability that a sum of `freedom` squares of independent standard normal numbers exceeds `value`.
 *
 * `value` not below 0, `freedom` above 0 (throws a RangeError otherwise). Error below 1e-13, relative below 1e-10 in the tail.
 * Source: the incomplete gamma function, M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, 26.4 and 6.5.
 *
 * Example: chiSquareTail(3.841, 1) = 0.05
 */
export const chiSquareTail = (value: number, freedom: number): number => {
  if (!(value >= 0 && freedom > 0)) throw new RangeError('chi-square takes a sum of squares and a count above 0');
  return value === 0 ? 1 : upperGamma(freedom / 2, value / 2);
};

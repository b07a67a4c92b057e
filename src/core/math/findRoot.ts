/** How an iterative search ended; the caller decides what an unfinished one means. */
export interface SearchOutcome {
  readonly x: number;
  readonly value: number;
  readonly converged: boolean;
  readonly iterations: number;
}

/**
 * A zero of f between a and b, where f(a) and f(b) have opposite signs: Brent's bisection, secant and inverse quadratic steps.
 *
 * Stops when the bracket is shorter than `tolerance` (absolute, plus rounding) or after `maximumIterations`.
 * Throws a RangeError when the ends do not bracket a zero.
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4 (from memory).
 *
 * Example: findRoot((x) => x * x - 2, 1, 2, 1e-14).x = 1.4142135623731
 */
export const findRoot = (
  f: (x: number) => number,
  from: number,
  to: number,
  tolerance: number,
  maximumIterations = 200,
): SearchOutcome => {
  let [a, b] = [from, to];
  let [fa, fb] = [f(a), f(b)];
  if (!(fa * fb <= 0)) throw new RangeError(`no sign change between ${from} and ${to}`);
  let [c, fc] = [a, fa];
  let d = b - a;
  let e = d;
  for (let iterations = 0; iterations < maximumIterations; iterations++) {
    if (fb * fc > 0) {
      [c, fc] = [a, fa];
      d = b - a;
      e = d;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const close = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= close || fb === 0) return { x: b, value: fb, converged: true, iterations };
    let step = half;
    if (Math.abs(e) >= close && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa;
      let p = 2 * half * s;
      let q = 1 - s;
      if (a !== c) {
        const t = fa / fc;
        const r = fb / fc;
        p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
        q = (t - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      p = Math.abs(p);
      if (2 * p < Math.min(3 * half * q - Math.abs(close * q), Math.abs(e * q))) step = p / q;
    }
    e = step === half ? half : d;
    d = step;
    [a, fa] = [b, fb];
    b += Math.abs(d) > close ? d : Math.sign(half) * close;
    fb = f(b);
  }
  return { x: b, value: fb, converged: false, iterations: maximumIterations };
};

/**
 * Chebyshev coefficients of a smooth function on [from, to], as many as `out` is long, by its values at the Chebyshev nodes.
 * Source: Numerical Recipes, section 5.8 (method; from memory).
 */
export const fitChebyshevInto = (out: Float64Array, f: (x: number) => number, from: number, to: number): void => {
  const count = out.length;
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  const samples = Float64Array.from({ length: count }, (_, k) =>
    f(middle + half * Math.cos((Math.PI * (k + 0.5)) / count)),
  );
  for (let j = 0; j < count; j++) {
    let sum = 0;
    for (let k = 0; k < count; k++) sum += samples[k]! * Math.cos((Math.PI * j * (k + 0.5)) / count);
    out[j] = ((j === 0 ? 1 : 2) * sum) / count;
  }
};

/** Σ c_j T_j(t), −1 <= t <= 1, by Clenshaw's recurrence over `count` coefficients from `offset` on. */
export const sumChebyshev = (coefficients: Float64Array, offset: number, count: number, t: number): number => {
  const twice = 2 * t;
  let above = 0;
  let here = 0;
  for (let j = offset + count - 1; j > offset; j--) {
    const next = twice * here - above + coefficients[j]!;
    above = here;
    here = next;
  }
  return t * here - above + coefficients[offset]!;
};

/**
 * J0(x) ... JN(x) for |x| up to about 60, by Miller's backward recurrence, normalised with J0 + 2 (J2 + J4 + ...) = 1.
 *
 * The list ends where the values have fallen below 1e-18, so that sums over all orders may simply run to its end.
 * Absolute error: a few 1e-16. Cost: some |x| + 30 steps; for single values `besselJ0` and `besselJ1` are faster.
 * Source: J. C. P. Miller's algorithm, Abramowitz & Stegun, Handbook of Mathematical Functions, 9.12 example 1; DLMF 3.6(v).
 *
 * Example: besselSequence(2)[1] = 0.576724807756873
 */
export const besselSequence = (x: number): Float64Array => {
  const size = Math.abs(x);
  if (!(size <= 60)) throw new RangeError(`besselSequence holds for |x| <= 60, not ${x}`);
  if (size < 1e-8) return Float64Array.of(1, x / 2, (x * x) / 8);
  // An even order where the true value is below 1e-18: beyond |x| the values fall as Ai(t), t = (n − |x|) (2/|x|)^(1/3) ≈ 16.
  const start = 2 * Math.ceil((size + 10 + 12.5 * Math.cbrt(size)) / 2);
  const values = new Float64Array(start + 1);
  let above = 0;
  let here = 1e-290;
  let evenSum = 0;
  for (let n = start; n >= 0; n--) {
    values[n] = here;
    if (n > 0 && n % 2 === 0) evenSum += here;
    const below = ((2 * n) / size) * here - above;
    above = here;
    here = below;
    if (Math.abs(here) > 1e250) {
      // Small x: the sequence grows by hundreds of decades.
      for (let m = n; m <= start; m++) values[m] = values[m]! * 1e-250;
      above *= 1e-250;
      here *= 1e-250;
      evenSum *= 1e-250;
    }
  }
  const norm = 1 / (values[0]! + 2 * evenSum);
  for (let n = 0; n <= start; n++) values[n] = values[n]! * norm * (x < 0 && n % 2 === 1 ? -1 : 1);
  return values;
};

/**
 * Values of a curve over frequency, straight between points on a logarithmic frequency axis, held constant beyond its ends.
 *
 * `fromHz` and `toHz` ascend and are above 0 (unchecked kernel: the caller has checked). Writes into `out`, as long as `toHz`.
 * One pass over both lists. Error: second order in the step of ln f.
 *
 * Example: from [100, 10000] Hz with values [0, 2], the value at 1000 Hz is 1.
 */
export const interpolateLogInto = (
  out: Float64Array,
  toHz: ArrayLike<number>,
  fromHz: ArrayLike<number>,
  values: ArrayLike<number>,
): void => {
  const last = fromHz.length - 1;
  let i = 0;
  for (let k = 0; k < toHz.length; k++) {
    const f = toHz[k]!;
    if (f <= fromHz[0]!) out[k] = values[0]!;
    else if (f >= fromHz[last]!) out[k] = values[last]!;
    else {
      while (fromHz[i + 1]! < f) i++;
      const share = Math.log(f / fromHz[i]!) / Math.log(fromHz[i + 1]! / fromHz[i]!);
      out[k] = values[i]! + share * (values[i + 1]! - values[i]!);
    }
  }
};

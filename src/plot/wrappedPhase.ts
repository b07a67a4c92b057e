/**
 * Angle of a complex curve in degrees, -180 to 180, after a delay has been taken out of it (exp(+jωt): a delay turns the
 * angle by -ωτ).
 * Example: with `re` 0 and `im` -1 and no delay it is -90.
 */
export function wrappedPhaseDeg(
  curve: { readonly re: ArrayLike<number>; readonly im: ArrayLike<number> },
  frequenciesHz: ArrayLike<number>,
  delayS: number,
): Float64Array {
  const out = new Float64Array(frequenciesHz.length);
  for (let index = 0; index < out.length; index++) {
    const turns = (frequenciesHz[index] ?? 0) * delayS;
    const degrees = (Math.atan2(curve.im[index] ?? 0, curve.re[index] ?? 0) * 180) / Math.PI + 360 * (turns % 1);
    out[index] = degrees - 360 * Math.round(degrees / 360);
  }
  return out;
}

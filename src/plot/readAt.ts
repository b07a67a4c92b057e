/**
 * Value of a curve at a frequency: linear in value over the logarithm of frequency between the two neighbours. With
 * `periodic` (360 for degrees) two neighbours on either side of a wrap are joined the short way round.
 * `frequenciesHz` ascends. null outside it, or beside a value that is not finite.
 * Error: h²/8 times the curve's second derivative over ln f; near a resonance peak that is 4.3 h² Q² dB with h the step of
 * ln f: 0.005 dB for 1000 points over three decades and a Q of 5.
 * Example: `readAt([100, 200], [80, 86], 141.42)` is about 83.
 */
export function readAt(
  frequenciesHz: ArrayLike<number>,
  values: ArrayLike<number>,
  hz: number,
  periodic?: number,
): number | null {
  const last = frequenciesHz.length - 1;
  const first = frequenciesHz[0];
  const end = frequenciesHz[last];
  if (first === undefined || end === undefined || !(hz >= first && hz <= end)) return null;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((frequenciesHz[middle] ?? 0) <= hz) low = middle;
    else high = middle;
  }
  const from = values[low] ?? Number.NaN;
  let to = values[high] ?? Number.NaN;
  if (periodic !== undefined) to -= periodic * Math.round((to - from) / periodic);
  const lowHz = frequenciesHz[low] ?? hz;
  const highHz = frequenciesHz[high] ?? hz;
  const share = highHz > lowHz ? Math.log(hz / lowHz) / Math.log(highHz / lowHz) : 0;
  const value = share === 0 ? from : from + share * (to - from);
  if (!Number.isFinite(value)) return null;
  return periodic === undefined ? value : value - periodic * Math.round(value / periodic);
}

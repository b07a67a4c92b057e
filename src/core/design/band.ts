/** Indices [from, to) of ascending frequencies within a band, both ends included. */
export function bandIndices(frequenciesHz: Float64Array, fromHz: number, toHz: number): { from: number; to: number } {
  let from = 0;
  while (from < frequenciesHz.length && frequenciesHz[from]! < fromHz * (1 - 1e-12)) from++;
  let to = from;
  while (to < frequenciesHz.length && frequenciesHz[to]! <= toHz * (1 + 1e-12)) to++;
  return { from, to };
}

/** Greatest value within a band with its frequency; null where the band holds no point. */
export function greatestInBand(
  values: Float64Array,
  frequenciesHz: Float64Array,
  fromHz: number,
  toHz: number,
): { readonly value: number; readonly atHz: number } | null {
  const { from, to } = bandIndices(frequenciesHz, fromHz, toHz);
  let best = -1;
  for (let i = from; i < to; i++) if (best < 0 || values[i]! > values[best]!) best = i;
  return best < 0 ? null : { value: values[best]!, atHz: frequenciesHz[best]! };
}

/** Least value within a band with its frequency; null where the band holds no point. */
export function leastInBand(
  values: Float64Array,
  frequenciesHz: Float64Array,
  fromHz: number,
  toHz: number,
): { readonly value: number; readonly atHz: number } | null {
  const { from, to } = bandIndices(frequenciesHz, fromHz, toHz);
  let best = -1;
  for (let i = from; i < to; i++) if (best < 0 || values[i]! < values[best]!) best = i;
  return best < 0 ? null : { value: values[best]!, atHz: frequenciesHz[best]! };
}

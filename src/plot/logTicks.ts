const SETS = [
  [1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9],
  [1, 1.5, 2, 3, 4, 5, 7],
  [1, 1.5, 2, 3, 5, 7],
  [1, 2, 3, 5],
  [1, 2, 5],
  [1, 3],
  [1],
] as const;

const inSet = (multiples: readonly number[], low: number, high: number): number[] => {
  const values: number[] = [];
  for (let exponent = Math.floor(Math.log10(low)); 10 ** exponent <= high; exponent++) {
    for (const multiple of multiples) {
      const value = Number((multiple * 10 ** exponent).toPrecision(2));
      if (value >= low && value <= high) values.push(value);
    }
  }
  return values;
};

/**
 * Round values of a logarithmic axis, ascending, as many as stand at least `leastPx` apart when it is `lengthPx` long; empty unless 0 < low < high.
 * @example logTicks([14, 85], 300, 40) gives 15, 20, 30, 40, 50, 70
 */
export function logTicks(domain: readonly [number, number], lengthPx: number, leastPx: number): readonly number[] {
  const [low, high] = domain;
  if (!(low > 0 && high > low && Number.isFinite(high))) return [];
  const perRatioPx = lengthPx / Math.log(high / low);
  for (const multiples of SETS) {
    const values = inSet(multiples, low, high);
    if (values.every((value, k) => k === 0 || perRatioPx * Math.log(value / values[k - 1]!) >= leastPx)) return values;
  }
  // Too many decades even for one line each: every second, third, ...
  const stride = Math.ceil(leastPx / (perRatioPx * Math.log(10)));
  return inSet([1], low, high).filter((_, k) => k % stride === 0);
}

/** Round values between two, at most `most`, evenly strewn over their ratio: levels of contours. Empty unless 0 < low < high. */
export const roundLevels = (low: number, high: number, most: number): readonly number[] => {
  if (!(low > 0 && high > low && Number.isFinite(high))) return [];
  for (const multiples of SETS) {
    const values = inSet(multiples, low, high);
    if (values.length <= most) return values;
  }
  return inSet([1], low, high).slice(-most);
};

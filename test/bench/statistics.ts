/** The value below which the fraction lies, between the two nearest of a list. Throws on an empty list. */
export function quantile(values: readonly number[], fraction: number): number {
  if (values.length === 0) throw new RangeError('A list without values has no quantiles.');
  const sorted = values.toSorted((a, b) => a - b);
  const at = fraction * (sorted.length - 1);
  const below = sorted[Math.floor(at)]!;
  const above = sorted[Math.ceil(at)]!;
  return below + (above - below) * (at - Math.floor(at));
}

export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** Median, least and greatest, for a reader. */
export const spread = (values: readonly number[], unit: string): string =>
  `median ${median(values).toPrecision(3)} ${unit}, ${Math.min(...values).toPrecision(3)} to ` +
  `${Math.max(...values).toPrecision(3)} ${unit} in ${values.length} runs`;

const TOPS = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];

/**
 * Range of an axis that starts at zero: its top is the next round number at least 5 % above the greatest value.
 * Without a positive value it is 0 to 1.
 * Example: `fromZeroRange(37)` is `[0, 40]`.
 */
export function fromZeroRange(greatest: number | null): readonly [number, number] {
  if (greatest === null || !(greatest > 0) || !Number.isFinite(greatest)) return [0, 1];
  const needed = greatest * 1.05;
  const decade = 10 ** Math.floor(Math.log10(needed));
  const top = TOPS.find((candidate) => candidate * decade >= needed * (1 - 1e-12)) ?? 10;
  return [0, Number((top * decade).toPrecision(2))];
}

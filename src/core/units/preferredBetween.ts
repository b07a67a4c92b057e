import { preferredMantissas, type SeriesName } from './preferredSeries.ts';

/**
 * All values of a series from `from` to `to` (above 0, any unit, both counted), ascending. Throws a RangeError on other bounds.
 *
 * Series: IEC 60063.
 * @example preferredBetween('E3', 1, 10) // [1, 2.2, 4.7, 10]
 */
export function preferredBetween(series: SeriesName, from: number, to: number): number[] {
  if (!(from > 0 && to < Number.POSITIVE_INFINITY)) throw new RangeError(`no preferred values from ${from} to ${to}`);
  const mantissas = preferredMantissas(series);
  const digits = mantissas[0] === 10 ? 1 : 2;
  const values: number[] = [];
  for (let decade = Math.floor(Math.log10(from)); decade <= Math.floor(Math.log10(to)) + 1; decade++) {
    // Written as decimal text, so that 8.2 is the number nearest to 8.2.
    for (const mantissa of mantissas) values.push(Number(`${mantissa}e${decade - digits}`));
  }
  return values.filter((value) => value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9));
}

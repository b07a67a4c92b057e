import { preferredMantissas, type SeriesName } from './preferredSeries.ts';

/** Two values are the same preferred value within this ratio: wider than rounding, far narrower than any series. */
const SAME = 1e-9;

export interface Neighbours {
  readonly below: number;
  /** The preferred value itself where the given one is one, else null. */
  readonly at: number | null;
  readonly above: number;
}

/** The preferred values next to `value` (above 0) on either side, and the one it is. Throws when it is not above 0. */
export function neighbours(value: number, series: SeriesName): Neighbours {
  if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`No preferred value for ${value}`);
  const mantissas = preferredMantissas(series);
  const digits = mantissas[0] === 10 ? 1 : 2;
  const decade = Math.floor(Math.log10(value));
  // Written as decimal text, so that 8.2 is the number nearest to 8.2.
  const candidates = [decade - 1, decade, decade + 1].flatMap((exponent) =>
    mantissas.map((mantissa) => Number(`${mantissa}e${exponent - digits}`)),
  );
  const isSame = (candidate: number) => Math.abs(candidate / value - 1) <= SAME;
  return {
    below: candidates.findLast((candidate) => candidate < value && !isSame(candidate))!,
    at: candidates.find(isSame) ?? null,
    above: candidates.find((candidate) => candidate > value && !isSame(candidate))!,
  };
}

import { preferredBetween } from './preferredBetween.ts';
import type { SeriesName } from './preferredSeries.ts';

/** One part, or two joined. */
export interface Combination {
  readonly how: 'single' | 'series' | 'parallel';
  /** The larger value first. */
  readonly values: readonly number[];
  /** Where they stand in the list that was given, or in the series' values that were tried. */
  readonly places: readonly number[];
  /** What they make together. */
  readonly value: number;
  /** Value over target less 1. */
  readonly error: number;
}

export interface CombinationOptions {
  /** Try two parts joined, too. */
  readonly pairs: boolean;
  /** The way of joining in which values add up: series for resistors and coils, parallel for capacitors. */
  readonly addsIn: 'series' | 'parallel';
  /** Is each entry of a list one piece, or a value of which there are enough? Of a series there are always enough. */
  readonly pieces: 'one-each' | 'enough';
}

/** Parts of a pair lie within this ratio of the target: a smaller one is below any tolerance. */
const REACH = 1000;
/** Ratios nearer to 1 than this are exact but for rounding: a single part is then taken before a pair. */
const SAME = 1e-12;

/**
 * The single parts and pairs nearest to `target` (above 0, any unit), by ratio, best first, at most `most`.
 *
 * `values` is a series or an own list (each above 0). With a part given, the best partner is a neighbour of the exact one, so all pairs are
 * covered in n log n. Of equally near ones a single part comes first. Throws a RangeError on values that are not above 0.
 * @example nearestCombinations(5, 'E12', { pairs: true, addsIn: 'series', pieces: 'enough' }, 3)
 */
export function nearestCombinations(
  target: number,
  values: SeriesName | readonly number[],
  { pairs, addsIn, pieces }: CombinationOptions,
  most: number,
): Combination[] {
  if (!(target > 0 && Number.isFinite(target))) throw new RangeError(`no combination makes ${target}`);
  const isSeries = typeof values === 'string';
  const list = isSeries ? preferredBetween(values, target / REACH, target * REACH) : values;
  if (list.some((value) => !(value > 0 && Number.isFinite(value)))) throw new RangeError('a part has a value above 0');
  const order = list.map((_, place) => place).sort((a, b) => list[a]! - list[b]!);
  const sorted = order.map((place) => list[place]!);
  const found = order.map((place): Combination => made('single', [list[place]!], [place], list[place]!, target));
  if (pairs) {
    const reuse = isSeries || pieces === 'enough';
    for (const adding of [true, false]) {
      const how = adding ? addsIn : addsIn === 'series' ? 'parallel' : 'series';
      sorted.forEach((a, n) => {
        const partner = adding ? target - a : 1 / (1 / target - 1 / a);
        if (!(partner > 0 && Number.isFinite(partner))) return;
        for (const k of besides(sorted, partner, reuse ? -1 : n)) {
          const b = sorted[k]!;
          const value = adding ? a + b : 1 / (1 / a + 1 / b);
          const [large, small] = b >= a ? [k, n] : [n, k];
          found.push(made(how, [sorted[large]!, sorted[small]!], [order[large]!, order[small]!], value, target));
        }
      });
    }
  }
  // Single parts stand first, and sorting keeps the order of equals.
  found.sort((x, y) => away(x, target) - away(y, target));
  const best: Combination[] = [];
  const seen = new Set<string>();
  for (const combination of found) {
    const key = `${combination.how} ${[...combination.values].join(' ')}`;
    if (seen.has(key)) continue;
    seen.add(key);
    best.push(combination);
    if (best.length >= most) break;
  }
  return best;
}

/**
 * The nearest of them, or null where the list is empty.
 * @example nearestCombination(8.7e-6, [6.8e-6, 2.2e-6], { pairs: true, addsIn: 'parallel', pieces: 'one-each' })?.error // 0.034
 */
export const nearestCombination = (
  target: number,
  values: SeriesName | readonly number[],
  options: CombinationOptions,
): Combination | null => nearestCombinations(target, values, options, 1)[0] ?? null;

const made = (
  how: Combination['how'],
  values: readonly number[],
  places: readonly number[],
  value: number,
  target: number,
): Combination => ({ how, values, places, value, error: value / target - 1 });

const away = ({ value }: Combination, target: number): number => {
  const distance = Math.abs(Math.log(value / target));
  return distance < SAME ? 0 : distance;
};

/** Places of the values next to `wanted` on either side in an ascending list, leaving out one place. */
function besides(sorted: readonly number[], wanted: number, without: number): number[] {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < wanted) low = middle + 1;
    else high = middle;
  }
  const below = low - 1 === without ? low - 2 : low - 1;
  const above = low === without ? low + 1 : low;
  return [below, above].filter((place) => place >= 0 && place < sorted.length);
}

import { neighbours } from './preferredNeighbours.ts';
import type { SeriesName } from './preferredSeries.ts';

/**
 * The preferred value nearest to `value` (above 0, any unit), by the ratio ('log': what matters for a filter, where 10 %
 * up and 10 % down weigh alike) or by the difference ('linear'). Of two equally near the smaller is taken.
 *
 * Throws on a value that is not above 0. Series: IEC 60063.
 * Example: `nearestPreferred(3.97, 'E6', 'log')` is 4.7, with 'linear' it is 3.3.
 */
export function nearestPreferred(value: number, series: SeriesName, distance: 'log' | 'linear'): number {
  const { below, at, above } = neighbours(value, series);
  if (at !== null) return at;
  const nearerAbove = distance === 'log' ? above / value < value / below : above - value < value - below;
  return nearerAbove ? above : below;
}

import { neighbours } from './preferredNeighbours.ts';
import type { SeriesName } from './preferredSeries.ts';

/**
 * The next preferred value above (+1) or below (-1); from a value off the series the step goes to that neighbour.
 *
 * `value` above 0, in any unit; throws otherwise. Series: IEC 60063.
 * Example: `stepPreferred(6.8e-6, 'E12', 1)` is 8.2e-6; from 7e-6 it is 8.2e-6 too.
 */
export function stepPreferred(value: number, series: SeriesName, direction: 1 | -1): number {
  const { below, above } = neighbours(value, series);
  return direction === 1 ? above : below;
}

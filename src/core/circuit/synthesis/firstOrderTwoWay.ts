import type { Result } from '../../messages/problem.ts';
import { succeed } from '../../messages/problem.ts';
import { filterSection } from './filterSection.ts';
import type { Section } from './section.ts';

/**
 * First-order constant-voltage crossover: a coil before one driver and a capacitor before the other, whose outputs add
 * up to exactly the input (both 3.01 dB down and 90° apart at the corner).
 * Problems: as of `filterSection`.
 * Source: R. H. Small, "Constant-Voltage Crossover Network Design", JAES 19 (1), 1971.
 * @example firstOrderTwoWay({ cornerHz: 1200, lowOhm: 8, highOhm: 8 })
 */
export function firstOrderTwoWay(values: {
  readonly cornerHz: number;
  readonly lowOhm: number;
  readonly highOhm: number;
}): Result<{ readonly low: Section; readonly high: Section }> {
  const shape = { family: 'butterworth', order: 1 } as const;
  const low = filterSection('low-pass', shape, values.cornerHz, values.lowOhm);
  const high = filterSection('high-pass', shape, values.cornerHz, values.highOhm);
  if (!low.ok) return low;
  if (!high.ok) return high;
  const words = {
    source: 'R. H. Small, “Constant-Voltage Crossover Network Design”, JAES 19 (1), 1971',
    assumes:
      'Resistive loads, and drivers that are flat for some octaves beyond the corner and at the same distance. The slopes ' +
      'are gentle: check the tweeter’s excursion and power.',
  };
  return succeed({ low: { ...low.value, ...words }, high: { ...high.value, ...words } });
}

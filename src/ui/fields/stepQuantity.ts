import type { UnitSystem } from '../../core/units/quantityKind.ts';
import { stepPreferred } from '../../core/units/stepPreferred.ts';
import type { Settings } from '../../state/workbench.ts';
import type { Stepping } from './stepping.ts';

export interface StepKeys {
  readonly direction: 1 | -1;
  /** Ten times the step; for preferred values the same digits a decade on. */
  readonly coarse: boolean;
  /** A tenth of the step; for preferred values the finest series. */
  readonly fine: boolean;
}

/** Enough digits to keep a step and to lose the noise of adding decimal fractions. */
const tidy = (value: number): number => Number(value.toPrecision(10));

/**
 * The next value that an arrow key gives.
 *
 * Preferred values and values stepped by their second digit stay above 0; from 0 or below they do not move. Linear steps
 * go on to whole multiples of the step.
 * @example stepQuantity(6.8e-6, { by: 'series' }, { direction: 1, coarse: false, fine: false }, 'E12', 'metric') // 8.2e-6
 */
export function stepQuantity(
  value: number,
  stepping: Stepping,
  keys: StepKeys,
  series: Settings['series'],
  system: UnitSystem,
): number {
  if (stepping.by === 'linear') {
    const step = linearStep(stepping, system) * (keys.coarse ? 10 : keys.fine ? 0.1 : 1);
    const places = value / step;
    const nearest = Math.round(places);
    // From between two steps the first press goes to the neighbour, not past it.
    const onStep = Math.abs(places - nearest) < 1e-6;
    const next = onStep ? nearest + keys.direction : keys.direction === 1 ? Math.ceil(places) : Math.floor(places);
    return tidy(next * step);
  }
  if (!(value > 0)) return value;
  if (stepping.by === 'series') {
    if (keys.coarse) return tidy(keys.direction === 1 ? value * 10 : value / 10);
    return stepPreferred(value, keys.fine ? 'E96' : series, keys.direction);
  }
  if (keys.coarse) return tidy(digitStep(value, keys.direction, 10));
  return tidy(digitStep(value, keys.direction, keys.fine ? 0.1 : 1));
}

/** One in the second digit, times `size`; stepping down from a power of ten takes the smaller decade's step. */
function digitStep(value: number, direction: 1 | -1, size: number): number {
  const decade = Math.floor(Math.log10(value) + 1e-9);
  const atPower = Math.abs(value / 10 ** decade - 1) < 1e-9;
  const step = 10 ** (decade - 1 - (direction === -1 && atPower ? 1 : 0)) * size;
  const next = (Math.round(value / step) + direction) * step;
  return next > 0 ? next : value;
}

/** The even step in the kind's inside unit. */
export const linearStep = (stepping: Extract<Stepping, { by: 'linear' }>, system: UnitSystem): number =>
  system === 'imperial' ? (stepping.imperialStep ?? stepping.step) : stepping.step;

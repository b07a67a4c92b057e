import type { QuantityKind } from '../../core/units/quantityKind.ts';

const BARE_NUMBER = /^\s*[+-]?\d+(?:[.,]\d+)?\s*$/;
/** A bare frequency from here on is hertz whatever the field shows: nobody means 100 kHz by it. */
const HERTZ_FROM = 100;

/**
 * The unit of a number that is typed without one: the unit that the field shows, save a frequency that can only be hertz.
 * @example bareUnit('3000', 'frequency', 'kHz') // 'Hz'
 */
export function bareUnit(text: string, kind: QuantityKind, shownUnit: string): string {
  if (kind !== 'frequency' || !BARE_NUMBER.test(text)) return shownUnit;
  return Math.abs(Number(text.replace(',', '.'))) >= HERTZ_FROM ? 'Hz' : shownUnit;
}

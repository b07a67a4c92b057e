import { fromInside, requireUnit } from './findUnit.ts';
import { formatNumber, roundToDigits } from './formatNumber.ts';
import type { QuantityKind, UnitSystem } from './quantityKind.ts';
import { EVERYDAY_SIZE, shownUnits } from './shownUnits.ts';

/** A quantity as people read it; `unit` is empty for a plain number. */
export interface ShownQuantity {
  readonly number: string;
  readonly unit: string;
}

/**
 * The symbol of the unit that suits the size of a value: mm up to a metre, µF from 0.1 µF, kHz from 1000 Hz. A value that
 * rounds up to the next unit at `digits` digits takes it.
 */
export function suitableUnit(value: number, kind: QuantityKind, system: UnitSystem, digits: number): string {
  const steps = shownUnits(kind, system);
  const size = value === 0 ? (EVERYDAY_SIZE[kind] ?? 0) : value;
  let symbol = steps[0]![0];
  for (const [next, from] of steps) {
    // Rounded in the unit that it would otherwise have: 999.7 Hz at three digits is 1 kHz.
    const unit = requireUnit(symbol, kind);
    const shown = Math.abs(roundToDigits(fromInside(size, unit), digits));
    if (shown >= Math.abs(fromInside(from, unit)) * (1 - 1e-12)) symbol = next;
  }
  return symbol;
}

/**
 * Shows a value in the unit that suits its size, in one system of units: 6.8 µF, 0.27 mH, 24.6 L or 0.869 ft³, 3.15 kHz.
 * `value` is in the kind's inside unit; `digits` and `zeros` as for `formatNumber`. Throws on a value that is not finite.
 *
 * Example: `formatQuantity(0.0246, 'volume', 'metric', 3)` is `{ number: '24.6', unit: 'L' }`.
 */
export const formatQuantity = (
  value: number,
  kind: QuantityKind,
  system: UnitSystem,
  digits: number,
  zeros: 'drop' | 'keep' = 'drop',
): ShownQuantity => formatInUnit(value, kind, suitableUnit(value, kind, system, digits), digits, zeros);

/**
 * Shows a value in a given unit of its kind, as a field does whose unit must not jump while it is edited.
 *
 * Example: `formatInUnit(1.05, 'length', 'mm', 3)` is `{ number: '1050', unit: 'mm' }`.
 */
export const formatInUnit = (
  value: number,
  kind: QuantityKind,
  unit: string,
  digits: number,
  zeros: 'drop' | 'keep' = 'drop',
): ShownQuantity => {
  const entry = requireUnit(unit, kind);
  return { number: formatNumber(fromInside(value, entry), digits, zeros), unit: entry.symbol };
};

/** Number and unit as one text; degrees and percent signs stand as the trade writes them: 30°, 5 %. */
export const quantityText = ({ number, unit }: ShownQuantity): string =>
  unit === '' ? number : unit === '°' ? `${number}°` : `${number} ${unit}`;

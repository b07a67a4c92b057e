import { formatInUnit, formatQuantity, type ShownQuantity, suitableUnit } from '../../core/units/formatQuantity.ts';
import type { QuantityKind, UnitSystem } from '../../core/units/quantityKind.ts';

/** Lengths show tenths of a millimetre; everything else three digits, as parts are marked. */
const digitsOf = (kind: QuantityKind): number => (kind === 'length' ? 4 : 3);

/**
 * A value as a field shows it. `metricUnit` fixes the unit in the metric system, as carpentry wants millimetres above a
 * metre too.
 * @example showInField(1.05, 'length', 'metric', 'mm') // { number: '1050', unit: 'mm' }
 */
export function showInField(
  value: number,
  kind: QuantityKind,
  system: UnitSystem,
  metricUnit?: string | undefined,
): ShownQuantity {
  if (metricUnit !== undefined && system === 'metric') return formatInUnit(value, kind, metricUnit, digitsOf(kind));
  return formatQuantity(value, kind, system, digitsOf(kind));
}

/** The unit that a plain number typed into the field is in: the one shown, or the one for a value not yet stated. */
export function fieldUnit(
  value: number | null,
  kind: QuantityKind,
  system: UnitSystem,
  metricUnit?: string | undefined,
): string {
  if (metricUnit !== undefined && system === 'metric') return metricUnit;
  return suitableUnit(value ?? 0, kind, system, digitsOf(kind));
}

import { formatQuantity, quantityText } from '../../core/units/formatQuantity.ts';
import type { QuantityKind, UnitSystem } from '../../core/units/quantityKind.ts';

/** A running number of the screen as text with its unit, two or three digits. */
export const figureText = (value: number, kind: QuantityKind, system: UnitSystem, digits = 3): string =>
  Number.isFinite(value) ? quantityText(formatQuantity(value, kind, system, digits)) : '–';

import { formatQuantity, quantityText } from '../../core/units/formatQuantity.ts';
import type { UnitSystem } from '../../core/units/quantityKind.ts';

/** A volume of the build sheet, four digits, so that a millimetre of wood is seen in it. */
export const litres = (volumeM3: number, system: UnitSystem): string =>
  quantityText(formatQuantity(Math.abs(volumeM3) < 1e-12 ? 0 : volumeM3, 'volume', system, 4));

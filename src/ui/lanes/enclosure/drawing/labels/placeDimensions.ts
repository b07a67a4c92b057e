import { quantityText } from '../../../../../core/units/formatQuantity.ts';
import type { UnitSystem } from '../../../../../core/units/quantityKind.ts';
import { showInField } from '../../../../fields/showInField.ts';
import type { Box } from '../cabinetDrawing.ts';
import type { DimensionField } from './fields/dimensionField.ts';
import { boxAbout, placeLabels } from './placeLabels.ts';

export interface PlacedDimension {
  readonly field: DimensionField;
  readonly box: Box;
  readonly line: string;
}

/** Width of a character of a field's bold type, of what stands about its text, and a field's height, at plain type; px. */
const CHARACTER_PX = 7.6;
const PADDING_PX = 10;
const HEIGHT_PX = 26;
const LEAST_WIDTH_PX = 26;

/** Finds a place for each dimension in turn, within `widthPx`; those without room are left out, but for the ones that must be there. */
export function placeDimensions(
  fields: readonly DimensionField[],
  taken: readonly Box[],
  soft: readonly Box[],
  widthPx: number,
  system: UnitSystem,
  typeScale: number,
): PlacedDimension[] {
  const wishes = fields.map((field) => {
    const text = quantityText(showInField(field.value, field.kind, system, field.kind === 'length' ? 'mm' : undefined));
    const wide = Math.max(LEAST_WIDTH_PX, text.length * CHARACTER_PX + PADDING_PX) * typeScale;
    const shift = field.anchor === 'right' ? -wide / 2 : field.anchor === 'left' ? wide / 2 : 0;
    const options = field.places.map(({ xPx, yPx, line }) => ({
      field,
      line,
      box: boxAbout(xPx + shift, yPx, wide, HEIGHT_PX * typeScale),
    }));
    const inside = options.filter(({ box }) => box.leftPx >= 0 && box.leftPx + box.widthPx <= widthPx + 1);
    return { key: field.key, options: inside.length > 0 ? inside : options, must: field.must ?? false };
  });
  return [...placeLabels(wishes, taken, soft).values()];
}

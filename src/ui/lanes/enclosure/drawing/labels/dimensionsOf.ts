import type { Enclosure } from '../../../../../core/document/schema.ts';
import type { CabinetDrawing } from '../cabinetDrawing.ts';
import { boardFields } from './fields/boardFields.ts';
import { braceFields } from './fields/braceFields.ts';
import type { DimensionField } from './fields/dimensionField.ts';
import { heightFields } from './fields/heightFields.ts';
import { outsideFields } from './fields/outsideFields.ts';
import { backFields, panelFields } from './fields/panelFields.ts';
import { portFields } from './fields/portFields.ts';

/** Every dimension of the drawing that can be edited where it stands, the weightiest first. Pixels grow with the type by `typeScale`. */
export function dimensionsOf(
  drawing: CabinetDrawing,
  enclosure: Enclosure,
  ways: readonly { readonly speakerId: string; readonly name: string }[],
  selectedSpeaker: string | null,
  typeScale: number,
): DimensionField[] {
  const at = { drawing, enclosure, typeScale };
  const heights = heightFields(at, ways);
  const isSelected = ({ key }: DimensionField) => key === `height ${selectedSpeaker}`;
  return [
    ...outsideFields(at),
    ...(drawing.side ? portFields({ ...at, side: drawing.side }) : []),
    ...heights.filter(isSelected),
    ...heights.filter((field) => !isSelected(field)),
    ...(drawing.side ? [...boardFields(at), ...braceFields(at), ...panelFields(at)] : []),
    ...(drawing.section ? backFields(at) : []),
  ];
}

import { type LabelledCurve, type PlacedLabel, placeLabels } from '../../plot/index.ts';
import type { Picture } from './picture.ts';
import { pixelCurve } from './pixelCurve.ts';
import type { PlotStructure } from './plotStructure.ts';

/** Width of a text in pixels; `strong` for the heavier weight. */
export type TextWidth = (text: string) => number;

/**
 * Where the names of a picture's curves and lines stand. Limits choose after the curves, since they run all across and
 * find room anywhere; the curves on top choose first.
 */
export function curveLabels(
  picture: Picture,
  structure: PlotStructure,
  textWidth: TextWidth,
  lineHeightPx: number,
  previous: readonly PlacedLabel[],
): readonly PlacedLabel[] {
  const { area } = structure;
  const wanted: LabelledCurve[] = [];
  for (const curve of [...picture.curves].reverse()) {
    const scale = curve.axis === 'right' ? structure.right : structure.left;
    if (!scale || curve.named === false) continue;
    const pixels = pixelCurve(curve, structure.x, scale);
    wanted.push({ id: curve.id, ...pixels, widthPx: textWidth(curve.name), heightPx: lineHeightPx });
  }
  for (const line of picture.lines) {
    const y = structure.left.toPx(line.value);
    wanted.push({
      id: line.id,
      xsPx: [area.left, area.right],
      ysPx: [y, y],
      widthPx: textWidth(line.label),
      heightPx: lineHeightPx,
    });
  }
  return placeLabels(wanted, area, [], previous);
}

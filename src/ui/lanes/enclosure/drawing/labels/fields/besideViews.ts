import { type CabinetDrawing, onSide, type Point } from '../../cabinetDrawing.ts';
import { BELOW_PX, type DimensionField, ROW_PX } from './dimensionField.ts';

/** To the right of the side view, at a height; nowhere where no room is kept there. */
export function chain(drawing: CabinetDrawing, yM: number, typeScale: number): DimensionField['places'] {
  if (!drawing.chained) return [];
  const side = drawing.side!;
  const xPx = side.leftPx + side.widthPx;
  const { yPx } = onSide({ side, pxPerM: drawing.pxPerM }, 0, yM);
  return [0, -12, 12, -24, 24].map((off) => ({
    xPx: xPx + 12,
    yPx: yPx + off * typeScale,
    line: `M${xPx},${yPx}h4l6,${off * typeScale}`,
  }));
}

/** Below the row of the outside dimensions, with a line from one place of a view to another. */
export function secondRow(
  { front }: CabinetDrawing,
  fromPx: number,
  toPx: number,
  typeScale: number,
): Point & { readonly line: string } {
  const floorPx = front.topPx + front.heightPx;
  const yPx = floorPx + 12 + ROW_PX * typeScale;
  return {
    xPx: (fromPx + toPx) / 2,
    yPx: floorPx + (BELOW_PX + ROW_PX) * typeScale,
    line: `M${fromPx},${yPx}H${toPx}M${fromPx},${yPx - 4}v8M${toPx},${yPx - 4}v8`,
  };
}

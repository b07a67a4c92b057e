import { drawCurve, type ValueScale } from '../../plot/index.ts';
import type { Palette } from './palette.ts';
import type { Picture, PictureCurve } from './picture.ts';
import { pixelCurve } from './pixelCurve.ts';
import type { PlotStructure } from './plotStructure.ts';

/** Opacity of curves that stand back while another is lifted. */
const BACK = 0.3;

/**
 * Paints a picture into a canvas: lines of the axes, limits, then the curves in their order. `lifted` is the speaker whose
 * curves stand out. The context is in CSS pixels.
 */
export function paintPicture(
  context: CanvasRenderingContext2D,
  picture: Picture,
  structure: PlotStructure,
  palette: Palette,
  lifted: string | null,
): void {
  const { area } = structure;
  context.clearRect(0, 0, structure.widthPx, structure.heightPx);
  context.globalAlpha = 1;
  paintGrid(context, structure, palette);
  context.save();
  context.beginPath();
  context.rect(area.left, area.top, area.right - area.left, area.bottom - area.top);
  context.clip();
  for (const line of picture.lines) {
    const y = structure.left.toPx(line.value);
    context.strokeStyle = palette(line.colour);
    context.lineWidth = 1;
    context.setLineDash(line.kind === 'limit' ? [6, 3] : [2, 4]);
    stroke(context, [area.left, y, area.right, y]);
  }
  const anyLifted = lifted !== null && picture.curves.some((curve) => curve.speakerId === lifted);
  for (const curve of picture.curves) {
    const scale = curve.axis === 'right' ? structure.right : structure.left;
    if (scale) paintCurve(context, curve, structure, scale, palette, anyLifted ? lifted : null);
  }
  context.restore();
}

function paintGrid(context: CanvasRenderingContext2D, structure: PlotStructure, palette: Palette): void {
  const { area } = structure;
  context.lineWidth = 1;
  context.setLineDash([]);
  for (const tick of structure.xTicks) {
    context.strokeStyle = palette(isDecade(tick.hz) ? '--rule' : '--rule-faint');
    const x = crisp(structure.x.toPx(tick.hz));
    stroke(context, [x, area.top, x, area.bottom]);
  }
  for (const tick of structure.leftTicks) {
    context.strokeStyle = palette('--rule-faint');
    const y = crisp(structure.left.toPx(tick.value));
    stroke(context, [area.left, y, area.right, y]);
  }
}

function paintCurve(
  context: CanvasRenderingContext2D,
  curve: PictureCurve,
  structure: PlotStructure,
  scale: ValueScale,
  palette: Palette,
  lifted: string | null,
): void {
  const { style } = curve;
  const up = lifted !== null && curve.speakerId === lifted;
  const widthPx = up ? style.widthPx + 1.25 : style.widthPx;
  context.globalAlpha = lifted === null || up ? 1 : BACK;
  context.strokeStyle = palette(style.colour);
  context.lineWidth = widthPx;
  context.setLineDash(style.dash.map((part) => part * widthPx));
  context.lineJoin = 'round';
  context.beginPath();
  const { xsPx, ysPx } = pixelCurve(curve, structure.x, scale);
  drawCurve(context, xsPx, ysPx, structure.area.left, structure.area.right);
  context.stroke();
}

function stroke(context: CanvasRenderingContext2D, [x1, y1, x2, y2]: readonly [number, number, number, number]): void {
  context.beginPath();
  context.moveTo(x1, y1);
  context.lineTo(x2, y2);
  context.stroke();
}

const isDecade = (hz: number): boolean => Number.isInteger(Math.log10(hz));

const crisp = (px: number): number => Math.round(px - 0.5) + 0.5;

import { line } from 'd3-shape';
import { pixelPoints } from './pixelPoints.ts';

/** What a curve is drawn into: a canvas, a Path2D, or a recorder in a test. */
export interface PathSink {
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  closePath(): void;
}

/**
 * Adds a curve to the present path of `sink`; values that are not finite leave a gap. The caller begins and strokes.
 * `xsPx` ascends and is as long as `ysPx`; only what lies between `fromPx` and `toPx` is drawn, with a neighbour on
 * either side, at most five points per pixel column.
 */
export function drawCurve(
  sink: PathSink,
  xsPx: ArrayLike<number>,
  ysPx: ArrayLike<number>,
  fromPx: number,
  toPx: number,
): void {
  // A straight line uses these three methods only, though the type asks for a whole canvas.
  outline(xsPx, ysPx).context(sink as CanvasRenderingContext2D)(pixelPoints(xsPx, ysPx, fromPx, toPx) as number[]);
}

/** The same curve as the `d` of an SVG path, with one decimal. */
export function curvePath(xsPx: ArrayLike<number>, ysPx: ArrayLike<number>, fromPx: number, toPx: number): string {
  return outline(xsPx, ysPx).digits(1)(pixelPoints(xsPx, ysPx, fromPx, toPx) as number[]) ?? '';
}

const outline = (xsPx: ArrayLike<number>, ysPx: ArrayLike<number>) =>
  line<number>(
    (index) => xsPx[index] ?? 0,
    (index) => ysPx[index] ?? 0,
  ).defined((index) => Number.isFinite(ysPx[index]));

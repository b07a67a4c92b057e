import type { Enclosure } from '../../../core/document/schema.ts';

export interface Box {
  readonly leftPx: number;
  readonly topPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Front and side view of the cabinet at one scale, in pixels of the drawing. */
export interface CabinetDrawing {
  readonly pxPerM: number;
  readonly front: Box;
  readonly side: Box;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Room around the views for leads, titles and dimension lines. */
const MARGIN_PX = { left: 34, between: 80, right: 20, top: 26, bottom: 52 };
const LEAST_SCALE_PX_PER_M = 60;

/**
 * Lays front and side view beside each other, as large as the given space allows.
 *
 * The views stand at the top left of the space, lead lines coming in from the left; the drawing's own height may be
 * less than the space.
 * @example cabinetDrawing({ widthM: 0.27, heightM: 0.94, depthM: 0.34 }, 480, 460).front.widthPx
 */
export function cabinetDrawing(
  size: Pick<Enclosure, 'widthM' | 'heightM' | 'depthM'>,
  spaceWidthPx: number,
  spaceHeightPx: number,
): CabinetDrawing {
  const across = spaceWidthPx - MARGIN_PX.left - MARGIN_PX.between - MARGIN_PX.right;
  const down = spaceHeightPx - MARGIN_PX.top - MARGIN_PX.bottom;
  const pxPerM = Math.max(LEAST_SCALE_PX_PER_M, Math.min(across / (size.widthM + size.depthM), down / size.heightM));
  // What the height leaves free across is shared, so that the drawing stands in the middle of its column.
  const spare = Math.max(0, across - pxPerM * (size.widthM + size.depthM));
  const heightPx = size.heightM * pxPerM;
  const front: Box = {
    leftPx: MARGIN_PX.left + spare / 3,
    topPx: MARGIN_PX.top,
    widthPx: size.widthM * pxPerM,
    heightPx,
  };
  const side: Box = {
    leftPx: front.leftPx + front.widthPx + MARGIN_PX.between + Math.min(spare / 6, 30),
    topPx: MARGIN_PX.top,
    widthPx: size.depthM * pxPerM,
    heightPx,
  };
  return {
    pxPerM,
    front,
    side,
    widthPx: Math.max(spaceWidthPx, side.leftPx + side.widthPx + MARGIN_PX.right),
    heightPx: MARGIN_PX.top + heightPx + MARGIN_PX.bottom,
  };
}

/** A place on the front view, from coordinates on the baffle (x from the middle, y up from the bottom). */
export function onFront(
  drawing: CabinetDrawing,
  xM: number,
  yM: number,
): { readonly xPx: number; readonly yPx: number } {
  return {
    xPx: drawing.front.leftPx + drawing.front.widthPx / 2 + xM * drawing.pxPerM,
    yPx: drawing.front.topPx + drawing.front.heightPx - yM * drawing.pxPerM,
  };
}

/** A place in the side view, from depth behind the front plane and height above the bottom. The front is at the left. */
export function onSide(
  drawing: CabinetDrawing,
  behindFrontM: number,
  yM: number,
): { readonly xPx: number; readonly yPx: number } {
  return {
    xPx: drawing.side.leftPx + behindFrontM * drawing.pxPerM,
    yPx: drawing.side.topPx + drawing.side.heightPx - yM * drawing.pxPerM,
  };
}

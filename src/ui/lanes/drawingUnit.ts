/** Pixels for one unit of the drawing at which text and symbols suit each other, and the least at which they still do. */
const BEST_REM = 0.86;
const LEAST_REM = 0.69;

/**
 * Pixels for one drawing unit: as large as suits the text where the width allows, never so small that values run into one
 * another; a drawing that is then still too wide scrolls sideways.
 */
export function drawingUnit(planWidth: number, spacePx: number, remPx: number): number {
  const fitting = planWidth > 0 ? spacePx / planWidth : BEST_REM * remPx;
  return Math.max(LEAST_REM * remPx, Math.min(BEST_REM * remPx, fitting));
}

/** Room at the sides of a drawing that spans all lanes: for the lanes' edges, and before the next column. */
export const WIDE_MARGINS_PX = { left: 14, right: 10 };

/** The least width, as a length in CSS, at which a drawing across all lanes need not scroll sideways. */
export const leastDrawingWidth = (planWidth: number): string =>
  `calc(${(planWidth * LEAST_REM).toFixed(2)}rem + ${WIDE_MARGINS_PX.left + WIDE_MARGINS_PX.right + 1}px)`;

/**
 * Pixels for one drawing unit downwards: never so small that things above one another, each 24 px high, cannot be hit
 * apart. The tightest are a value over a bridged part (four units for two of them) and a value beside a leg under a part
 * of the rail (three units down, texts half a unit up).
 */
export const rowUnit = (unitPx: number): number => Math.max(12.1, 16.1 - unitPx / 3, unitPx);

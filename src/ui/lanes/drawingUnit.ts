/** Pixels for one unit of the drawing at which text and symbols suit each other, and the least at which they still do. */
const BEST_REM = 0.86;
const LEAST_REM = 0.62;

/**
 * Pixels for one drawing unit: as large as suits the text where the width allows, never so small that values run into one
 * another; a drawing that is then still too wide scrolls sideways.
 */
export function drawingUnit(planWidth: number, spacePx: number, remPx: number): number {
  const fitting = planWidth > 0 ? spacePx / planWidth : BEST_REM * remPx;
  return Math.max(LEAST_REM * remPx, Math.min(BEST_REM * remPx, fitting));
}

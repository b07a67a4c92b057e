import { toGrid } from './sawGrid.ts';

/**
 * How many equal strips come out of a sheet: n w + (n − 1) kerf ≤ W, so n = ⌊(W + kerf)/(w + kerf)⌋, with `trimM` taken off
 * both sides first. All in m, in whole micrometres, so that 4 strips of 300 mm do fit where they fit exactly; 0 where
 * not one does. Throws on a strip that is not above zero. Source: arithmetic.
 *
 * Example: stripsAcross(1.22, 0.3, 0.003, 0) === 4.
 */
export function stripsAcross(sheetWidthM: number, stripWidthM: number, kerfM: number, trimM: number): number {
  const strip = toGrid(stripWidthM);
  const kerf = toGrid(kerfM);
  const room = toGrid(sheetWidthM) - 2 * toGrid(trimM);
  if (!(strip > 0) || !(kerf >= 0)) throw new RangeError(`A strip of ${stripWidthM} m with a kerf of ${kerfM} m.`);
  return room < strip ? 0 : Math.floor((room + kerf) / (strip + kerf));
}

import type { CuttingOptions, SheetPart, StockSheet } from './cutting.ts';

// The search works in whole micrometres with the kerf added once to every part and every sheet: a part of w needs w + kerf,
// a sheet of W offers W + kerf, and then cuts need no book-keeping (n w + (n − 1) k ≤ W is n (w + k) ≤ W + k).

const GRID_PER_M = 1e6;
export const toGrid = (m: number): number => Math.round(m * GRID_PER_M);
export const fromGrid = (units: number): number => units / GRID_PER_M;

/** One part to be cut, kerf added: x along the sheet's length. */
export interface Piece {
  readonly partIndex: number;
  readonly w: number;
  readonly h: number;
  readonly turns: boolean;
  readonly area: number;
}
/** The usable field of a kind of sheet, trim off, kerf added. */
export interface Field {
  readonly w: number;
  readonly h: number;
  readonly count: number;
}

/** One piece for each part to be cut, equal ones together. */
export const piecesOf = (parts: readonly SheetPart[], kerfM: number): Piece[] =>
  parts.flatMap((part, partIndex) => {
    const w = toGrid(part.lengthM) + toGrid(kerfM);
    const h = toGrid(part.widthM) + toGrid(kerfM);
    const turns = part.grain === 'any' && part.allowRotation && w !== h;
    return Array.from({ length: part.count }, () => ({ partIndex, w, h, turns, area: w * h }));
  });

export const fieldsOf = (stock: readonly StockSheet[], { kerfM, trimM }: CuttingOptions): Field[] =>
  stock.map(({ lengthM, widthM, count }) => ({
    w: toGrid(lengthM) - 2 * toGrid(trimM) + toGrid(kerfM),
    h: toGrid(widthM) - 2 * toGrid(trimM) + toGrid(kerfM),
    count: count === 'unlimited' ? Number.POSITIVE_INFINITY : count,
  }));

export const fitsIn = (piece: Piece, field: Field): boolean =>
  (piece.w <= field.w && piece.h <= field.h) || (piece.turns && piece.h <= field.w && piece.w <= field.h);

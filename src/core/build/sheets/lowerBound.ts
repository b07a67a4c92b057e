import type { Field, Piece } from './sawGrid.ts';

/** Can the two share some sheet, in some position? */
const canShare = (a: Piece, b: Piece, fields: readonly Field[]): boolean => {
  const ways = (p: Piece) => [[p.w, p.h] as const, ...(p.turns ? [[p.h, p.w] as const] : [])];
  return fields.some((field) =>
    ways(a).some(([aw, ah]) =>
      ways(b).some(
        ([bw, bh]) =>
          (aw + bw <= field.w && Math.max(ah, bh) <= field.h) || (ah + bh <= field.h && Math.max(aw, bw) <= field.w),
      ),
    ),
  );
};

/**
 * Sheets that no layout can do without: the larger of the area bound (the largest sheets of the stock filled to the last
 * square millimetre, kerf counted) and a number of parts of which no two fit on one sheet (found greedily, largest first, so
 * it may be less than the most there are). Source: arithmetic.
 */
export function lowerBound(pieces: readonly Piece[], fields: readonly Field[]): number {
  let area = pieces.reduce((sum, { area }) => sum + area, 0);
  let sheets = 0;
  for (const field of [...fields].sort((a, b) => b.w * b.h - a.w * a.h)) {
    const many = Math.min(field.count, Math.ceil(area / (field.w * field.h)));
    sheets += many;
    area -= many * field.w * field.h;
    if (area <= 0) break;
  }
  const apart: Piece[] = [];
  for (const piece of [...pieces].sort((a, b) => b.area - a.area)) {
    if (apart.every((other) => !canShare(piece, other, fields))) apart.push(piece);
  }
  return Math.max(sheets, apart.length);
}

import type { SheetPart, StockSheet } from '../../../../src/core/build/index.ts';

/** First-fit decreasing height on one kind of sheet, shelves across the width; what the plainest hand layout needs. */
export function plainShelves(
  parts: readonly SheetPart[],
  { lengthM, widthM }: StockSheet,
  kerfM: number,
  trimM: number,
): { readonly sheets: number; readonly largestRestM2: number } {
  const um = (m: number): number => Math.round(m * 1e6);
  const [L, W, k] = [um(lengthM) - 2 * um(trimM), um(widthM) - 2 * um(trimM), um(kerfM)];
  const items = parts
    .flatMap(({ lengthM: l, widthM: w, count }) => Array.from({ length: count }, () => [um(l), um(w)] as const))
    .sort((a, b) => b[1] - a[1]);
  const sheets: { top: number; shelves: { height: number; end: number }[] }[] = [];
  const rests: number[] = [];
  for (const [l, w] of items) {
    const shelf = sheets.flatMap((s) => s.shelves).find(({ height, end }) => w <= height && end + l <= L);
    if (shelf !== undefined) {
      shelf.end += l + k;
      continue;
    }
    let sheet = sheets.find(({ top }) => top + w <= W);
    if (sheet === undefined) {
      sheet = { top: 0, shelves: [] };
      sheets.push(sheet);
    }
    sheet.shelves.push({ height: w, end: l + k });
    sheet.top += w + k;
  }
  for (const { top, shelves } of sheets) {
    rests.push(Math.max(0, W - top) * L, ...shelves.map(({ height, end }) => Math.max(0, L - end) * height));
  }
  return { sheets: sheets.length, largestRestM2: Math.max(0, ...rests) / 1e12 };
}

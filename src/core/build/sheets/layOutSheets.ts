import { fail, type Problem, problem, type Result, succeed } from '../../messages/problem.ts';
import type { CuttingOptions, SheetLayout, SheetPart, StockSheet } from './cutting.ts';
import { planSheet } from './planSheet.ts';
import { fieldsOf, fitsIn, piecesOf, toGrid } from './sawGrid.ts';
import { searchLayout } from './searchLayout.ts';

/** More pieces than this are refused: the search looks at every free rectangle for each of them. */
export const MOST_PIECES = 600;

const isCount = (count: number): boolean => Number.isInteger(count) && count >= 0;
const isSize = (m: number): boolean => Number.isFinite(m) && toGrid(m) > 0 && m < 1000;

function faultsOf(parts: readonly SheetPart[], stock: readonly StockSheet[], options: CuttingOptions): Problem[] {
  const { kerfM, trimM } = options;
  const faults: Problem[] = [];
  for (const { id, lengthM, widthM, count } of parts) {
    if (!isSize(lengthM) || !isSize(widthM) || !isCount(count))
      faults.push(problem('build.part-without-size', { kind: 'document', id }, { name: id }));
  }
  if (
    stock.some(
      ({ lengthM, widthM, count }) => !isSize(lengthM) || !isSize(widthM) || !(count === 'unlimited' || isCount(count)),
    )
  )
    faults.push(problem('build.sheet-without-size', { kind: 'document' }));
  if (![kerfM, trimM].every((m) => Number.isFinite(m) && m >= 0 && m < 1000))
    faults.push(problem('build.saw-below-zero', { kind: 'document' }));
  const many = parts.reduce((sum, { count }) => sum + count, 0);
  if (faults.length === 0 && many > MOST_PIECES)
    faults.push(problem('build.too-many-pieces', { kind: 'document' }, { count: many, most: MOST_PIECES }));
  return faults;
}

/**
 * Lays parts out on stock boards by guillotine cuts: every cut goes straight through the piece it is made in.
 *
 * All sizes in m; x along a sheet's length, which is the grain. Sizes are taken to the micrometre. The number of sheets is
 * proved least where `provedOptimal` says so (it meets an area bound, parts that exclude one another, or, for few parts,
 * every set of them was looked at); otherwise it is the best found. Of equal numbers of sheets: least sheet area, then the largest
 * single off-cut, then fewest stages. Never worse than first-fit shelves. Returns problems: `build.part-too-large`,
 * `build.stock-too-short`, and sizes or counts that are none.
 * Method: kerf added once on parts and sheets, guillotine best fit with restarts (J. Jylänki 2010), exact sets for few
 * parts (after Christofides and Whitlock 1977), dense blocks from pieces upwards (after Wang 1983, from memory).
 *
 * Example: layOutSheets([{ id: 'side', lengthM: 0.6, widthM: 0.3, count: 2, grain: 'any', allowRotation: true }],
 * [{ lengthM: 2.44, widthM: 1.22, count: 'unlimited' }], { kerfM: 0.003, trimM: 0.005, seed: 1, effort: 2000 }).
 */
export function layOutSheets(
  parts: readonly SheetPart[],
  stock: readonly StockSheet[],
  options: CuttingOptions,
): Result<SheetLayout> {
  const faults = faultsOf(parts, stock, options);
  if (faults.length > 0) return fail(...faults);
  const pieces = piecesOf(parts, options.kerfM);
  const fields = fieldsOf(stock, options);
  if (pieces.length > 0 && stock.length === 0) return fail(problem('build.no-stock', { kind: 'document' }));
  const tooLarge = parts.filter(({ count }, i) => {
    const piece = pieces.find(({ partIndex }) => partIndex === i);
    return count > 0 && !fields.some((field) => fitsIn(piece!, field));
  });
  if (tooLarge.length > 0) return fail(...tooLarge.map((part) => partTooLarge(part, stock, options.trimM)));

  const found = searchLayout(pieces, fields, options);
  if (found.sheets === null) {
    const sheets = stock.reduce((sum, { count }) => sum + (count === 'unlimited' ? 0 : count), 0);
    return fail(problem('build.stock-too-short', { kind: 'document' }, { sheets, least: found.lowerBound }));
  }
  const saw = { kerf: toGrid(options.kerfM), trim: toGrid(options.trimM) };
  const sheets = found.sheets.map((sheet) => planSheet(sheet, pieces, parts, stock, saw));
  const partsAreaM2 = parts.reduce((sum, { lengthM, widthM, count }) => sum + lengthM * widthM * count, 0);
  const sheetsAreaM2 = sheets.reduce((sum, { lengthM, widthM }) => sum + lengthM * widthM, 0);
  const offCutsM2 = sheets.flatMap(({ offCuts }) => offCuts.map(({ lengthM, widthM }) => lengthM * widthM));
  return succeed({
    sheets,
    wasteFraction: sheets.length === 0 ? 0 : 1 - partsAreaM2 / sheetsAreaM2,
    partsAreaM2,
    sheetsAreaM2,
    sheetAreaM2: stock.map(({ lengthM, widthM }) => lengthM * widthM),
    largestOffCutM2: Math.max(0, ...offCutsM2),
    lowerBound: found.lowerBound,
    provedOptimal: sheets.length <= found.lowerBound,
    rounds: found.rounds,
    stopped: found.stopped,
  });
}

function partTooLarge(
  { id, lengthM, widthM, grain, allowRotation }: SheetPart,
  stock: readonly StockSheet[],
  trimM: number,
): Problem {
  const largest = stock.reduce((best, next) => (next.lengthM * next.widthM > best.lengthM * best.widthM ? next : best));
  return problem(
    'build.part-too-large',
    { kind: 'document', id },
    {
      name: id,
      lengthM,
      widthM,
      sheetLengthM: largest.lengthM - 2 * trimM,
      sheetWidthM: largest.widthM - 2 * trimM,
      turning: grain === 'any' && allowRotation ? 'tried' : 'not allowed',
    },
  );
}

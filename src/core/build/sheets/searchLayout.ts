import { type RandomStream, randomStream } from '../../math/randomStream.ts';
import { bestFit, type FitRules } from './bestFit.ts';
import type { CuttingOptions } from './cutting.ts';
import { EXACT_SETS, exactSheets, setsOf } from './exactSheets.ts';
import { fillDensely } from './fillDensely.ts';
import { lowerBound } from './lowerBound.ts';
import { type Field, type Piece, toGrid } from './sawGrid.ts';
import { compareScores, type Score, scoreOf } from './score.ts';
import { shelves } from './shelves.ts';
import type { OpenSheet } from './slot.ts';

export interface FoundLayout {
  /** Null where no layout was found within the stock. */
  readonly sheets: readonly OpenSheet[] | null;
  readonly lowerBound: number;
  readonly rounds: number;
  readonly stopped: boolean;
}

const ORDERS: readonly ((piece: Piece) => number)[] = [
  ({ area }) => area,
  ({ w, h }) => Math.max(w, h),
  ({ w, h }) => Math.min(w, h),
  ({ w, h }) => w + h,
  ({ w }) => w,
  ({ h }) => h,
];
const SPLITS = ['shorter-left', 'longer-left', 'smaller-area', 'larger-area'] as const;
const FITS = ['area', 'short-side'] as const;
/** Every so many restarts one sheet-by-sheet search, which takes about as long as those. */
const DENSE_EVERY = 250;
const DENSE_WIDTH = 60;

const inOrder = (pieces: readonly Piece[], key: (piece: Piece) => number, random: RandomStream | null): number[] => {
  const keys = pieces.map((piece) => key(piece) * (random === null ? 1 : 0.6 + 0.8 * random.uniform()));
  return pieces.map((_, i) => i).sort((a, b) => keys[b]! - keys[a]!);
};

/**
 * Looks for the layout with the best score: shelves; best fit in 6 orders with 4 rules of splitting and 2 of fitting; then,
 * while more sheets are used than the bound asks for, all layouts of few pieces, and restarts with the order and the
 * splits drawn by chance, now and then sheet by sheet. Same seed and effort, same answer.
 */
export function searchLayout(pieces: readonly Piece[], fields: readonly Field[], options: CuttingOptions): FoundLayout {
  const random = randomStream(options.seed);
  let bound = lowerBound(pieces, fields);
  const found: { best: { readonly sheets: readonly OpenSheet[]; readonly score: Score } | null } = { best: null };
  const offer = (sheets: readonly OpenSheet[] | null): void => {
    if (sheets === null) return;
    const score = scoreOf(sheets, fields, toGrid(options.kerfM));
    if (found.best === null || compareScores(score, found.best.score) < 0) found.best = { sheets, score };
  };
  const fitted = (order: readonly number[], rules: FitRules): void => {
    const sheets: OpenSheet[] = [];
    if (bestFit(pieces, order, fields, sheets, rules)) offer(sheets);
  };
  const bestCount = (): number => found.best?.score.sheets ?? Number.POSITIVE_INFINITY;
  const settled = (): boolean => bestCount() <= bound && fields.length === 1;

  for (const opens of fields.length === 1 ? (['largest'] as const) : (['largest', 'smallest'] as const)) {
    const rules = { opens, random, fit: 'area', split: 'random' } as const;
    for (const axis of ['x', 'y'] as const) offer(shelves(pieces, fields, axis, rules));
    for (const key of ORDERS) {
      for (const split of SPLITS)
        for (const fit of FITS) fitted(inOrder(pieces, key, null), { fit, split, opens, random });
    }
  }
  if (bestCount() > bound && setsOf(pieces, [...pieces.keys()]) <= EXACT_SETS) {
    const exact = exactSheets(pieces, [...pieces.keys()], fields);
    if (exact !== null) {
      bound = Math.max(bound, exact.length);
      if (fields.every(({ count }, i) => exact.filter(({ field }) => field === i).length <= count)) offer(exact);
    }
  }
  let rounds = 0;
  let stopped = false;
  while (rounds < options.effort && !settled()) {
    if (options.shouldStop?.() === true) {
      stopped = true;
      break;
    }
    if (rounds % DENSE_EVERY === 0) offer(fillDensely(pieces, fields, DENSE_WIDTH, random));
    const key = ORDERS[Math.floor(random.uniform() * ORDERS.length)]!;
    const fit = FITS[Math.floor(random.uniform() * FITS.length)]!;
    fitted(inOrder(pieces, key, random), { fit, split: 'random', opens: 'random', random });
    rounds += 1;
    if (rounds % 50 === 0)
      options.onProgress?.({ round: rounds, rounds: options.effort, sheets: bestCount(), lowerBound: bound });
  }
  return { sheets: found.best?.sheets ?? null, lowerBound: bound, rounds, stopped };
}

import type { RandomStream } from '../../math/randomStream.ts';
import type { Field, Piece } from './sawGrid.ts';
import { fitsIn } from './sawGrid.ts';
import { cutSlot, type OpenSheet, openSheet, type Slot } from './slot.ts';

export type Fit = 'area' | 'short-side';
export type SplitRule = 'shorter-left' | 'longer-left' | 'smaller-area' | 'larger-area' | 'random';
export interface FitRules {
  readonly fit: Fit;
  readonly split: SplitRule;
  /** Which kind of sheet is opened first, of those that take the piece. */
  readonly opens: 'largest' | 'smallest' | 'random';
  readonly random: RandomStream;
}

interface Choice {
  readonly sheet: OpenSheet;
  readonly index: number;
  readonly turned: boolean;
  readonly penalty: number;
}

const penaltyOf = (fit: Fit, slot: Slot, w: number, h: number): number =>
  fit === 'area' ? slot.w * slot.h - w * h : Math.min(slot.w - w, slot.h - h);

function choose(piece: Piece, sheets: readonly OpenSheet[], fit: Fit): Choice | null {
  let best: Choice | null = null;
  for (const sheet of sheets) {
    for (let index = 0; index < sheet.free.length; index++) {
      const slot = sheet.free[index]!;
      for (let turn = 0; turn < (piece.turns ? 2 : 1); turn++) {
        const w = turn === 1 ? piece.h : piece.w;
        const h = turn === 1 ? piece.w : piece.h;
        if (w > slot.w || h > slot.h) continue;
        const penalty = penaltyOf(fit, slot, w, h);
        if (best === null || penalty < best.penalty) best = { sheet, index, turned: turn === 1, penalty };
      }
    }
  }
  return best;
}

/** Does the first cut run across x (a full-height strip comes off) rather than across y? */
function cutsAcrossX(slot: Slot, w: number, h: number, rule: SplitRule, random: RandomStream): boolean {
  const dw = slot.w - w;
  const dh = slot.h - h;
  if (rule === 'shorter-left') return dw > dh;
  if (rule === 'longer-left') return dw <= dh;
  if (rule === 'smaller-area') return w * dh < dw * h;
  if (rule === 'larger-area') return w * dh >= dw * h;
  return random.uniform() < 0.5;
}

function place(piece: number, w: number, h: number, choice: Choice, rules: FitRules): void {
  const { sheet, index, turned } = choice;
  const slot = sheet.free[index]!;
  const firstX = cutsAcrossX(slot, w, h, rules.split, rules.random);
  const [near, far] = cutSlot(slot, firstX ? 'x' : 'y', firstX ? w : h);
  const [home, rest] = cutSlot(near, firstX ? 'y' : 'x', firstX ? h : w);
  home.content = { kind: 'piece', piece, turned };
  sheet.free.splice(index, 1);
  if (far !== null) sheet.free.push(far);
  if (rest !== null) sheet.free.push(rest);
}

/** The kind of sheet to open for a piece; −1 where none is left. */
export function fieldToOpen(
  piece: Piece,
  fields: readonly Field[],
  used: readonly OpenSheet[],
  rules: Pick<FitRules, 'opens' | 'random'>,
): number {
  const able = fields.flatMap((field, i) =>
    fitsIn(piece, field) && used.filter((sheet) => sheet.field === i).length < field.count ? [i] : [],
  );
  if (able.length === 0) return -1;
  if (rules.opens === 'random') return able[Math.floor(rules.random.uniform() * able.length)]!;
  const sign = rules.opens === 'largest' ? -1 : 1;
  return able.reduce((best, i) => {
    const [a, b] = [fields[i]!, fields[best]!];
    return sign * (a.w * a.h - b.w * b.h) < 0 ? i : best;
  });
}

/** Puts those pieces that fit into rectangles left free; gives the others, in their order. */
export const fitIntoFree = (
  pieces: readonly Piece[],
  order: readonly number[],
  sheets: readonly OpenSheet[],
  rules: FitRules,
): number[] =>
  order.filter((at) => {
    const piece = pieces[at]!;
    const choice = choose(piece, sheets, rules.fit);
    if (choice !== null) place(at, choice.turned ? piece.h : piece.w, choice.turned ? piece.w : piece.h, choice, rules);
    return choice === null;
  });

/**
 * Puts pieces into sheets one after another, each where it fits best, cutting the rest of that rectangle in two: the
 * guillotine best-fit rules of J. Jylänki, "A thousand ways to pack the bin", 2010. `sheets` grows; false where the stock
 * ran out. `order`: indexes into `pieces`.
 */
export function bestFit(
  pieces: readonly Piece[],
  order: readonly number[],
  fields: readonly Field[],
  sheets: OpenSheet[],
  rules: FitRules,
): boolean {
  for (const at of order) {
    const piece = pieces[at]!;
    let choice = choose(piece, sheets, rules.fit);
    if (choice === null) {
      const field = fieldToOpen(piece, fields, sheets, rules);
      if (field < 0) return false;
      const sheet = openSheet(field, fields[field]!);
      sheets.push(sheet);
      choice = choose(piece, [sheet], rules.fit);
    }
    if (choice === null) throw new Error('A piece does not fit the sheet that was opened for it.');
    place(at, choice.turned ? piece.h : piece.w, choice.turned ? piece.w : piece.h, choice, rules);
  }
  return true;
}

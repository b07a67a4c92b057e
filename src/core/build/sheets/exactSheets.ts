import { type Block, digitOf, pairBlock, placeBlock, radixesOf, singleBlocks, typesOf } from './block.ts';
import type { Field, Piece } from './sawGrid.ts';
import { type OpenSheet, openSheet } from './slot.ts';

/** Sets of pieces (equal pieces counted, not named) up to which every one of them is looked at. */
export const EXACT_SETS = 1100;

export const setsOf = (pieces: readonly Piece[], among: readonly number[]): number =>
  radixesOf(typesOf(pieces, among)).at(-1)!;

/** Keeps those rectangles that no other is smaller than both ways. */
function keepSmallest(list: Block[], block: Block): void {
  if (list.some((other) => other.w <= block.w && other.h <= block.h)) return;
  for (let i = list.length - 1; i >= 0; i--) if (block.w <= list[i]!.w && block.h <= list[i]!.h) list.splice(i, 1);
  list.push(block);
}

/**
 * The fewest sheets for a small number of pieces, and a layout with them. Every set of pieces has its smallest rectangles
 * found from those of its two parts, over all ways to part it: a guillotine layout begins with a cut that parts its pieces
 * in two, so by induction none is missed, and the positions of the cuts are sums of part sizes (the normal patterns of N.
 * Christofides and C. Whitlock, Operations Research 25, 1977, 30). Then sets that fit a sheet are put together. The count of a
 * kind of sheet is not looked at: the caller checks. Null where some piece fits no sheet.
 */
export function exactSheets(
  pieces: readonly Piece[],
  among: readonly number[],
  fields: readonly Field[],
): OpenSheet[] | null {
  const types = typesOf(pieces, among);
  const weights = radixesOf(types);
  const all = weights.at(-1)! - 1;
  const digits = Array.from({ length: all + 1 }, (_, key) => types.map((_, type) => digitOf(key, type, weights)));
  const within = (part: number, whole: number): boolean =>
    digits[part]!.every((count, type) => count <= digits[whole]![type]!);
  const fieldFor = ({ w, h }: Block): number => {
    const able = fields.flatMap((field, i) => (w <= field.w && h <= field.h ? [i] : []));
    return able.reduce(
      (best, i) => (best < 0 || fields[i]!.w * fields[i]!.h < fields[best]!.w * fields[best]!.h ? i : best),
      -1,
    );
  };

  const rectangles: Block[][] = Array.from({ length: all + 1 }, () => []);
  for (const block of singleBlocks(types, weights)) {
    if (fieldFor(block) >= 0) rectangles[block.key]!.push(block);
  }
  for (let set = 1; set <= all; set++) {
    const list = rectangles[set]!;
    for (let part = 1; part <= set - part; part++) {
      if (!within(part, set)) continue;
      for (const a of rectangles[part]!) {
        for (const b of rectangles[set - part]!) {
          for (const axis of ['x', 'y'] as const) {
            const block = pairBlock(a, b, axis);
            if (fieldFor(block) >= 0) keepSmallest(list, block);
          }
        }
      }
    }
  }

  const fewest: number[] = [0];
  const taken: number[] = [0];
  for (let set = 1; set <= all; set++) {
    fewest[set] = Number.POSITIVE_INFINITY;
    for (let part = 1; part <= set; part++) {
      if (rectangles[part]!.length === 0 || !within(part, set) || fewest[set - part]! + 1 >= fewest[set]!) continue;
      fewest[set] = fewest[set - part]! + 1;
      taken[set] = part;
    }
  }
  if (!Number.isFinite(fewest[all]!)) return null;

  const left = types.map(({ members }) => [...members]);
  const sheets: OpenSheet[] = [];
  for (let set = all; set > 0; set -= taken[set]!) {
    const block = rectangles[taken[set]!]!.reduce((best, next) => (next.w * next.h < best.w * best.h ? next : best));
    const field = fieldFor(block);
    const sheet = openSheet(field, fields[field]!);
    placeBlock(sheet, sheet.root, block, left);
    sheets.push(sheet);
  }
  return sheets;
}

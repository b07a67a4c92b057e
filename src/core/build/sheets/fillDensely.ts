import type { RandomStream } from '../../math/randomStream.ts';
import { type FitRules, fieldToOpen, fitIntoFree } from './bestFit.ts';
import { placeBlock, typesOf } from './block.ts';
import { denseBlocks } from './denseBlocks.ts';
import { EXACT_SETS, exactSheets, setsOf } from './exactSheets.ts';
import type { Field, Piece } from './sawGrid.ts';
import { type OpenSheet, openSheet } from './slot.ts';

/** Pieces that one sheet is chosen from; more would make the sets too many. */
const WINDOW = 26;

/**
 * One sheet after another, each as full as can be found, and the last few pieces exactly. Null where the stock ran out.
 * A sheet is one of the fullest, by chance, so that another call finds another layout.
 */
export function fillDensely(
  pieces: readonly Piece[],
  fields: readonly Field[],
  width: number,
  random: RandomStream,
): OpenSheet[] | null {
  const rules: FitRules = { fit: 'area', split: 'shorter-left', opens: 'random', random };
  const sheets: OpenSheet[] = [];
  let left = pieces.map((_, i) => i).sort((a, b) => pieces[b]!.area - pieces[a]!.area);
  const within = (all: readonly OpenSheet[]): boolean =>
    fields.every(({ count }, i) => all.filter(({ field }) => field === i).length <= count);
  while (left.length > 0) {
    if (setsOf(pieces, left) <= EXACT_SETS) {
      const rest = exactSheets(pieces, left, fields);
      if (rest !== null && within([...sheets, ...rest])) return [...sheets, ...rest];
    }
    const field = fieldToOpen(pieces[left[0]!]!, fields, sheets, rules);
    if (field < 0) return null;
    const sheet = openSheet(field, fields[field]!);
    sheets.push(sheet);
    const types = typesOf(pieces, left.slice(0, WINDOW));
    const fill = 0.88 + 0.1 * random.uniform();
    const blocks = denseBlocks(types, fields[field]!, { width, fill, random });
    const members = types.map((type) => [...type.members]);
    const choice = random.uniform() ** 3;
    const block = blocks[Math.floor(choice * Math.min(20, blocks.length))]!;
    placeBlock(sheet, sheet.root, block, members);
    const put = new Set(left.slice(0, WINDOW));
    for (const at of members.flat()) put.delete(at);
    left = left.filter((at) => !put.has(at));
    left = fitIntoFree(pieces, left, sheets, rules);
  }
  return sheets;
}

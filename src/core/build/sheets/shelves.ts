import { type FitRules, fieldToOpen } from './bestFit.ts';
import type { Field, Piece } from './sawGrid.ts';
import { cutSlot, type OpenSheet, openSheet, type Slot } from './slot.ts';

/**
 * First-fit decreasing height: pieces by falling height, each on the first shelf with room, a new shelf on the first sheet
 * with room. `axis` 'y' stacks shelves along y, 'x' along x. The plainest guillotine layout (Coffman, Garey, Johnson and
 * Tarjan 1980, from memory), which no answer may be worse than. Null where the stock ran out; pieces are not turned.
 */
export function shelves(
  pieces: readonly Piece[],
  fields: readonly Field[],
  axis: 'x' | 'y',
  rules: FitRules,
): OpenSheet[] | null {
  const across = axis === 'y' ? 'x' : 'y';
  const high = (size: { readonly w: number; readonly h: number }) => (axis === 'y' ? size.h : size.w);
  const wide = (size: { readonly w: number; readonly h: number }) => (axis === 'y' ? size.w : size.h);
  const sheets: OpenSheet[] = [];
  const rows: { readonly sheet: OpenSheet; slot: Slot | null; readonly height: number }[] = [];
  const rests = new Map<OpenSheet, Slot | null>();
  const order = pieces.map((_, i) => i).sort((a, b) => high(pieces[b]!) - high(pieces[a]!));
  const drop = (sheet: OpenSheet, slot: Slot) => sheet.free.splice(sheet.free.indexOf(slot), 1);

  for (const at of order) {
    const piece = pieces[at]!;
    let row = rows.find(({ slot, height }) => slot !== null && wide(slot) >= wide(piece) && height >= high(piece));
    if (row === undefined) {
      let sheet = sheets.find((one) => {
        const rest = rests.get(one);
        return rest !== null && rest !== undefined && high(rest) >= high(piece) && wide(rest) >= wide(piece);
      });
      if (sheet === undefined) {
        const field = fieldToOpen({ ...piece, turns: false }, fields, sheets, rules);
        if (field < 0) return null;
        sheet = openSheet(field, fields[field]!);
        sheets.push(sheet);
        rests.set(sheet, sheet.root);
      }
      const rest = rests.get(sheet)!;
      const [slot, above] = cutSlot(rest, axis, high(piece));
      drop(sheet, rest);
      sheet.free.push(slot, ...(above === null ? [] : [above]));
      rests.set(sheet, above);
      row = { sheet, slot, height: high(piece) };
      rows.push(row);
    }
    const [cell, beside] = cutSlot(row.slot!, across, wide(piece));
    drop(row.sheet, row.slot!);
    const [home, over] = cutSlot(cell, axis, high(piece));
    home.content = { kind: 'piece', piece: at, turned: false };
    row.sheet.free.push(...[beside, over].filter((slot) => slot !== null));
    row.slot = beside;
  }
  return sheets;
}

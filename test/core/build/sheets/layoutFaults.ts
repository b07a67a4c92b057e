import type {
  CuttingOptions,
  SheetLayout,
  SheetPart,
  SheetRectangle,
  StockSheet,
} from '../../../../src/core/build/index.ts';

// Judges a layout from its numbers alone, with nothing of the search: in whole micrometres.

interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}
const um = (m: number): number => Math.round(m * 1e6);
const boxOf = ({ xM, yM, lengthM, widthM }: SheetRectangle): Box => ({
  x: um(xM),
  y: um(yM),
  w: um(lengthM),
  h: um(widthM),
});
const apart = (a: Box, b: Box, kerf: number): boolean =>
  a.x + a.w + kerf <= b.x || b.x + b.w + kerf <= a.x || a.y + a.h + kerf <= b.y || b.y + b.h + kerf <= a.y;

/** Can straight cuts, each right through, of this kerf part the boxes? */
export function isGuillotine(boxes: readonly Box[], kerf: number): boolean {
  if (boxes.length <= 1) return true;
  for (const [from, size] of [['x', 'w'] as const, ['y', 'h'] as const]) {
    for (const { [from]: start, [size]: length } of boxes) {
      const line = start + length;
      const near = boxes.filter((box) => box[from] + box[size] <= line);
      const far = boxes.filter((box) => box[from] >= line + kerf);
      if (near.length + far.length === boxes.length && far.length > 0)
        return isGuillotine(near, kerf) && isGuillotine(far, kerf);
    }
  }
  return false;
}

/** Saws along the list of cuts; gives what is left over and complains of a cut that cannot be made. */
function sawn(sheet: SheetLayout['sheets'][number], kerf: number): { pieces: Box[]; faults: string[] } {
  const faults: string[] = [];
  const pieces = new Map<number, Box>([[0, { x: 0, y: 0, w: um(sheet.lengthM), h: um(sheet.widthM) }]]);
  let stage = 0;
  for (const { number, kind, stage: own, piece, axis, atM, fenceM, leaves, from } of sheet.cuts) {
    const box = pieces.get(piece);
    if (box === undefined) {
      faults.push(`cut ${number} is in piece ${piece}, which is not there`);
      continue;
    }
    if (own < stage) faults.push(`cut ${number} goes back to stage ${own}`);
    stage = own;
    const seen = boxOf(from);
    if (seen.x !== box.x || seen.y !== box.y || seen.w !== box.w || seen.h !== box.h)
      faults.push(`cut ${number} states another piece than the one there`);
    const [start, size] = axis === 'x' ? (['x', 'w'] as const) : (['y', 'h'] as const);
    const at = um(atM);
    const end = box[start] + box[size];
    if (at <= box[start] || at > end) faults.push(`cut ${number} misses its piece`);
    pieces.delete(piece);
    if (kind === 'trim') {
      // The kept side is the one the fence measures.
      const keepsFar = end - at === um(fenceM);
      pieces.set(0, keepsFar ? { ...box, [start]: at, [size]: end - at } : { ...box, [size]: at - box[start] });
      continue;
    }
    if ((kind === 'cross') !== (axis === 'x')) faults.push(`cut ${number} is no ${kind}`);
    if (at - box[start] !== um(fenceM)) faults.push(`cut ${number} has another fence`);
    pieces.set(leaves[0], { ...box, [size]: at - box[start] });
    const rest = end - at - kerf;
    if (rest > 0 !== (leaves[1] !== null)) faults.push(`cut ${number} leaves ${rest} µm`);
    if (leaves[1] !== null) pieces.set(leaves[1], { ...box, [start]: at + kerf, [size]: rest });
  }
  return { pieces: [...pieces.values()], faults };
}

/** Everything that is wrong with a layout; empty for a good one. */
export function layoutFaults(
  layout: SheetLayout,
  parts: readonly SheetPart[],
  stock: readonly StockSheet[],
  { kerfM, trimM }: CuttingOptions,
): string[] {
  const [kerf, trim] = [um(kerfM), um(trimM)];
  const faults: string[] = [];
  const placed = new Map<string, number>();
  layout.sheets.forEach((sheet, i) => {
    const boxes = sheet.parts.map(boxOf);
    sheet.parts.forEach((part, j) => {
      placed.set(part.partId, (placed.get(part.partId) ?? 0) + 1);
      const wanted = parts.find(({ id }) => id === part.partId)!;
      const [l, w] = part.rotated ? [wanted.widthM, wanted.lengthM] : [wanted.lengthM, wanted.widthM];
      const { x, y, w: boxW, h: boxH } = boxes[j]!;
      if (boxW !== um(l) || boxH !== um(w)) faults.push(`sheet ${i}: ${part.partId} has another size`);
      if (part.rotated && (wanted.grain !== 'any' || !wanted.allowRotation)) faults.push(`${part.partId} is turned`);
      if (x < trim || y < trim || x + boxW > um(sheet.lengthM) - trim || y + boxH > um(sheet.widthM) - trim)
        faults.push(`sheet ${i}: ${part.partId} leaves the board`);
      boxes.slice(j + 1).forEach((other) => {
        if (!apart(boxes[j]!, other, kerf)) faults.push(`sheet ${i}: ${part.partId} overlaps another`);
      });
    });
    if (!isGuillotine(boxes, kerf)) faults.push(`sheet ${i}: no guillotine layout`);
    const { pieces, faults: sawFaults } = sawn(sheet, kerf);
    faults.push(...sawFaults.map((fault) => `sheet ${i}: ${fault}`));
    const expected = [...boxes, ...sheet.offCuts.map(boxOf)];
    const text = (box: Box): string => `${box.x} ${box.y} ${box.w} ${box.h}`;
    // Wood between two kerfs of zero width is none.
    const left = pieces
      .filter(({ w, h }) => w > 0 && h > 0)
      .map(text)
      .sort()
      .join('; ');
    if (left !== expected.map(text).sort().join('; ')) faults.push(`sheet ${i}: the cuts leave ${left}`);
  });
  for (const { id, count } of parts) if ((placed.get(id) ?? 0) !== count) faults.push(`${id}: not ${count} pieces`);
  stock.forEach(({ count }, kind) => {
    const used = layout.sheets.filter((sheet) => sheet.stock === kind).length;
    if (count !== 'unlimited' && used > count) faults.push(`${used} of stock ${kind}`);
  });
  return faults;
}

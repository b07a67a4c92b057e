import type { SheetCut, SheetPart, SheetPlan, SheetRectangle, StockSheet } from './cutting.ts';
import { fromGrid, type Piece } from './sawGrid.ts';
import { endsOf, type OpenSheet, type Slot, stagesOf } from './slot.ts';

interface Saw {
  readonly kerf: number;
  readonly trim: number;
}

/** The wood of a slot: kerf off, trim added; null where the saw leaves nothing. */
const woodOf = ({ x, y, w, h }: Slot, { kerf, trim }: Saw): SheetRectangle | null =>
  w > kerf && h > kerf
    ? { xM: fromGrid(x + trim), yM: fromGrid(y + trim), lengthM: fromGrid(w - kerf), widthM: fromGrid(h - kerf) }
    : null;

interface TreeCut {
  readonly slot: Slot;
  readonly axis: 'x' | 'y';
  readonly stage: number;
  readonly first: Slot;
  readonly second: Slot;
}

/** Cuts from the board inwards: all of one stage, then the next, so that the saw is set up once for each. */
function cutsInStages(root: Slot): readonly TreeCut[] {
  const cuts: TreeCut[] = [];
  const walk = (slot: Slot, stage: number, axis: 'x' | 'y' | null): void => {
    if (slot.content.kind !== 'cut') return;
    const { axis: own, first, second } = slot.content;
    const here = own === axis ? stage : stage + 1;
    cuts.push({ slot, axis: own, stage: here, first, second });
    walk(first, here, own);
    walk(second, here, own);
  };
  walk(root, 0, null);
  return cuts.sort((a, b) => a.stage - b.stage);
}

type Bare = Omit<SheetCut, 'number'>;

function trimCuts({ lengthM, widthM }: StockSheet, saw: Saw): Bare[] {
  if (saw.trim === 0) return [];
  const trimM = fromGrid(saw.trim);
  const cut = (from: SheetRectangle, axis: 'x' | 'y', atM: number, fenceM: number): Bare => ({
    kind: 'trim',
    stage: 0,
    piece: 0,
    from,
    axis,
    fenceM,
    atM,
    leaves: [0, null],
  });
  const whole = { xM: 0, yM: 0, lengthM, widthM };
  const nearY = { ...whole, yM: trimM, widthM: widthM - trimM };
  const bothY = { ...nearY, widthM: widthM - 2 * trimM };
  const nearX = { ...bothY, xM: trimM, lengthM: lengthM - trimM };
  return [
    cut(whole, 'y', trimM, nearY.widthM),
    cut(nearY, 'y', widthM - trimM, bothY.widthM),
    cut(bothY, 'x', trimM, nearX.lengthM),
    cut(nearX, 'x', lengthM - trimM, lengthM - 2 * trimM),
  ];
}

/** One sheet of the search as placed parts, off-cuts and the list of cuts, in m on the untrimmed board. */
export function planSheet(
  sheet: OpenSheet,
  pieces: readonly Piece[],
  parts: readonly SheetPart[],
  stock: readonly StockSheet[],
  saw: Saw,
): SheetPlan {
  const board = stock[sheet.field]!;
  const ends = [...endsOf(sheet.root)];
  const placed = ends.flatMap((slot) => {
    if (slot.content.kind !== 'piece') return [];
    const wood = woodOf(slot, saw)!;
    return [{ ...wood, partId: parts[pieces[slot.content.piece]!.partIndex]!.id, rotated: slot.content.turned }];
  });
  const offCuts = ends
    .flatMap((slot) => (slot.content.kind === 'empty' ? [woodOf(slot, saw)] : []))
    .filter((wood) => wood !== null)
    .sort((a, b) => b.lengthM * b.widthM - a.lengthM * a.widthM);

  const names = new Map<Slot, number>([[sheet.root, 0]]);
  const nameOf = (slot: Slot): number => {
    names.set(slot, names.size);
    return names.size - 1;
  };
  const cuts: Bare[] = trimCuts(board, saw);
  for (const { slot, axis, stage, first, second } of cutsInStages(sheet.root)) {
    const wood = woodOf(first, saw)!;
    cuts.push({
      kind: axis === 'x' ? 'cross' : 'rip',
      stage,
      piece: names.get(slot)!,
      from: woodOf(slot, saw)!,
      axis,
      fenceM: axis === 'x' ? wood.lengthM : wood.widthM,
      atM:
        axis === 'x'
          ? fromGrid(first.x + first.w - saw.kerf + saw.trim)
          : fromGrid(first.y + first.h - saw.kerf + saw.trim),
      leaves: [nameOf(first), woodOf(second, saw) === null ? null : nameOf(second)],
    });
  }
  return {
    stock: sheet.field,
    lengthM: board.lengthM,
    widthM: board.widthM,
    parts: placed,
    offCuts,
    cuts: cuts.map((cut, i) => ({ number: i + 1, ...cut })),
    stages: stagesOf(sheet.root),
  };
}

import type { Piece } from './sawGrid.ts';
import { cutSlot, type OpenSheet, type Slot } from './slot.ts';

/** Equal pieces are one type, so that a set of pieces is a list of counts. */
export interface PieceType {
  readonly piece: Piece;
  /** Indexes of the pieces that are of this type. */
  readonly members: readonly number[];
}

/** Pieces cut out of one rectangle with nothing beside them: one piece, or two blocks side by side (x) or stacked (y). */
export interface Block {
  readonly w: number;
  readonly h: number;
  /** Of the pieces in it. */
  readonly area: number;
  /** The counts of its types as one number, a digit for each type; see `radixesOf`. */
  readonly key: number;
  readonly made:
    | { readonly kind: 'piece'; readonly type: number; readonly turned: boolean }
    | { readonly kind: 'pair'; readonly axis: 'x' | 'y'; readonly a: Block; readonly b: Block };
}

export function typesOf(pieces: readonly Piece[], among: readonly number[]): PieceType[] {
  const byShape = new Map<string, { piece: Piece; members: number[] }>();
  for (const at of among) {
    const piece = pieces[at]!;
    const shape = `${piece.w} ${piece.h} ${piece.turns}`;
    const known = byShape.get(shape);
    if (known === undefined) byShape.set(shape, { piece, members: [at] });
    else known.members.push(at);
  }
  return [...byShape.values()];
}

/** Weight of each type's digit, and behind them the number of all sets. */
export const radixesOf = (types: readonly PieceType[]): readonly number[] => {
  const weights = [1];
  for (const { members } of types) weights.push(weights.at(-1)! * (members.length + 1));
  return weights;
};

export const digitOf = (key: number, type: number, weights: readonly number[]): number =>
  Math.floor((key % weights[type + 1]!) / weights[type]!);

export const singleBlocks = (types: readonly PieceType[], weights: readonly number[]): readonly Block[] =>
  types.flatMap(({ piece: { w, h, turns, area } }, type) => {
    const block = (turned: boolean): Block => ({
      w: turned ? h : w,
      h: turned ? w : h,
      area,
      key: weights[type]!,
      made: { kind: 'piece', type, turned },
    });
    return turns ? [block(false), block(true)] : [block(false)];
  });

export const pairBlock = (a: Block, b: Block, axis: 'x' | 'y'): Block => ({
  w: axis === 'x' ? a.w + b.w : Math.max(a.w, b.w),
  h: axis === 'x' ? Math.max(a.h, b.h) : a.h + b.h,
  area: a.area + b.area,
  key: a.key + b.key,
  made: { kind: 'pair', axis, a, b },
});

/** Cuts a block out of a free slot of a sheet, its members taken from `left` (one list of piece indexes for each type). */
export function placeBlock(sheet: OpenSheet, slot: Slot, block: Block, left: readonly number[][]): void {
  sheet.free.splice(sheet.free.indexOf(slot), 1);
  const keep = (rest: Slot | null): void => {
    if (rest !== null) sheet.free.push(rest);
  };
  const put = (into: Slot, part: Block): void => {
    // The cut that leaves the larger off-cut goes first.
    const xFirst = (into.w - part.w) * into.h >= into.w * (into.h - part.h);
    const [near, far] = cutSlot(into, xFirst ? 'x' : 'y', xFirst ? part.w : part.h);
    const [home, rest] = cutSlot(near, xFirst ? 'y' : 'x', xFirst ? part.h : part.w);
    keep(far);
    keep(rest);
    if (part.made.kind === 'piece') {
      home.content = { kind: 'piece', piece: left[part.made.type]!.pop()!, turned: part.made.turned };
      return;
    }
    const { axis, a, b } = part.made;
    const [one, other] = cutSlot(home, axis, axis === 'x' ? a.w : a.h);
    put(one, a);
    put(other!, b);
  };
  put(slot, block);
}

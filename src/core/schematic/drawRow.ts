import { draw, type Pen } from './draft.ts';
import { lead, toHalf } from './metrics.ts';
import { extraLead, uprightSize } from './pieceSize.ts';
import { placeLevel, placeUpright } from './placePiece.ts';
import type { Row } from './row.ts';
import type { SpTree } from './spTree.ts';

/** Middle of a leg of some height that hangs between `top` and `bottom`. */
export type LegY = (top: number, bottom: number, height: number) => number;
export const halfWay: LegY = (top, bottom) => toHalf((top + bottom) / 2);

export interface RowPlace {
  readonly xs: readonly number[];
  readonly hotY: number;
  /** One for each return rail, from the outermost. */
  readonly railYs: readonly number[];
  readonly bridgeLifts: readonly number[];
  readonly legY: LegY;
}

/** Draws a row; returns for each return rail the first and last x at which something stands on it, null where nothing does. */
export function drawRow(pen: Pen, row: Row, { xs, hotY, railYs, bridgeLifts, legY }: RowPlace, last: SpTree | null) {
  const { draft } = pen;
  const spans: ([number, number] | null)[] = row.rails.map(() => null);
  const stand = (rail: number, x: number): void => {
    const span = spans[rail];
    spans[rail] = span ? [Math.min(span[0], x), Math.max(span[1], x)] : [x, x];
  };
  row.columns.forEach(({ leg, rail }, k) => {
    const piece = k === row.columns.length - 1 && last !== null ? last : leg;
    if (piece === null) return;
    const top = hotY + extraLead(piece);
    const { height } = uprightSize(pen.view, piece);
    const from = toHalf(legY(top + lead, railYs[rail]! - lead, height) - height / 2);
    placeUpright(pen, piece, xs[k]!, from, from + height);
    draw(draft, piece.from, [xs[k]!, hotY], [xs[k]!, from]);
    draw(draft, piece.to, [xs[k]!, from + height], [xs[k]!, railYs[rail]!]);
    stand(rail, xs[k]!);
  });
  row.gaps.forEach(({ block, below }, k) => {
    const [left, right] = [xs[k]!, xs[k + 1]!];
    if (block === null) draw(draft, row.columns[k]!.node, [left, hotY], [right, hotY]);
    else placeLevel(pen, block, left, right, hotY);
    if (below === null) return;
    const inner = row.columns[k + 1]!.rail;
    const { leg } = row.columns[k]!;
    const clear = leg === null ? left : left + uprightSize(pen.view, leg).right;
    placeLevel(pen, below, clear, right, railYs[inner]!);
    draw(draft, below.from, [clear, railYs[inner]!], [left, railYs[inner]!], [left, railYs[inner - 1]!]);
    stand(inner - 1, left);
    stand(inner, right);
  });
  row.bridges.forEach(({ tree, from, to }, k) => {
    const y = hotY - bridgeLifts[k]!;
    draw(draft, tree.from, [xs[from]!, hotY], [xs[from]!, y]);
    draw(draft, tree.to, [xs[to]!, hotY], [xs[to]!, y]);
    placeLevel(pen, tree, xs[from]!, xs[to]!, y);
  });
  spans.forEach((span, rail) => {
    if (span !== null) draw(draft, row.rails[rail]!, [span[0], railYs[rail]!], [span[1], railYs[rail]!]);
  });
  return spans;
}

import { draw, type Pen } from './draft.ts';
import { addTo, type Buses } from './drawFrames.ts';
import { drawRow, halfWay } from './drawRow.ts';
import { horizontalReach, horizontalSlot, lead, partAcross } from './metrics.ts';
import { placeLevel } from './placePiece.ts';
import { rowSize } from './rowSize.ts';
import { leavesOf, openEdge, type SpLeaf } from './spTree.ts';
import type { Stage } from './stages.ts';

interface Item {
  /** Its first part in the part list. */
  readonly first: number;
  readonly width: number;
  readonly rise: number;
  readonly drop: number;
  draw(x: number, hotY: number): void;
}

/**
 * Draws rows and single parts side by side on shelves from `top` down, no wider than `width` where it can be helped.
 * Returns the lower edge.
 */
export function shelve(
  pen: Pen,
  rows: readonly Stage[],
  single: readonly SpLeaf[],
  buses: Buses,
  { top, width, room }: { top: number; width: number; room: number },
): number {
  const items = [
    ...rows.map((stage) => rowItem(pen, stage, buses, room)),
    ...single.map((leaf) => partItem(pen, leaf)),
  ].sort((a, b) => a.first - b.first);
  let floor = top;
  let shelf: Item[] = [];
  let used = 0;
  const close = (): void => {
    if (shelf.length === 0) return;
    const hotY = floor + room + Math.max(...shelf.map((item) => item.rise));
    let x = 1;
    for (const item of shelf) {
      item.draw(x, hotY);
      x += item.width;
    }
    floor = hotY + Math.max(...shelf.map((item) => item.drop)) + lead;
    shelf = [];
    used = 0;
  };
  for (const item of items) {
    if (used + item.width > width) close();
    shelf.push(item);
    used += item.width;
  }
  close();
  return floor;
}

function rowItem(pen: Pen, { row }: Stage, buses: Buses, room: number): Item {
  const size = rowSize(pen.view, row, false, room);
  const length = size.widths.reduce((a, b) => a + b, 0);
  const pieces = [...row.columns.map(({ leg }) => leg), ...row.gaps.flatMap(({ block, below }) => [block, below])];
  const edges = pieces.flatMap((piece) => (piece === null ? [] : leavesOf(piece).map((leaf) => leaf.edge)));
  return {
    first: Math.min(...edges.filter((edge) => edge !== openEdge)),
    width: size.start + length + size.end + partAcross,
    rise: size.rise + lead,
    drop: size.drop,
    draw(x, hotY) {
      const xs = [x + size.start];
      for (const step of size.widths) xs.push(xs.at(-1)! + step);
      const railYs = size.railLifts.map(() => hotY + size.drop);
      const spans = drawRow(pen, row, { xs, hotY, railYs, bridgeLifts: size.bridgeLifts, legY: halfWay }, null);
      if (spans[0]) addTo(buses, [{ node: row.rails[0]!, x: spans[0][1], y: railYs[0]! }]);
    },
  };
}

const partItem = (pen: Pen, leaf: SpLeaf): Item => ({
  first: leaf.edge,
  width: horizontalSlot + partAcross,
  rise: horizontalReach + lead,
  drop: horizontalReach + 0.5,
  draw(x, y) {
    const right = x + horizontalSlot;
    placeLevel(pen, leaf, x, right, y);
    if (leaf.from !== leaf.to) return;
    const under = y + horizontalReach + 0.5;
    draw(pen.draft, leaf.from, [x, y], [x, under], [right, under], [right, y]);
  },
});

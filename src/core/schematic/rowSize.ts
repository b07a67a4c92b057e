import type { CircuitView } from './circuitView.ts';
import { horizontalReach, lead, partAcross, partLength, railStep, rowGap } from './metrics.ts';
import { extraLead, levelSize, uprightSize } from './pieceSize.ts';
import type { Row } from './row.ts';
import { openEdge, type SpTree } from './spTree.ts';

export interface RowSize {
  /** Free space before the first column. */
  readonly start: number;
  /** Least width of each gap. */
  readonly widths: readonly number[];
  /** Free space after the last column. */
  readonly end: number;
  /** From the upper rail up to the upper edge of what stands above it. */
  readonly rise: number;
  /** From the upper rail down to the outermost return rail. */
  readonly drop: number;
  /** How far each return rail stands above the outermost one. */
  readonly railLifts: readonly number[];
  /** How far each bridge stands above the upper rail. */
  readonly bridgeLifts: readonly number[];
}

/** What a row needs, its gaps widened by half of `room`. A way's row ends at a speaker and has its return rails one above the other; a shared row's are level. */
export function rowSize(view: CircuitView, row: Row, isWay: boolean, room: number): RowSize {
  const half = partAcross / 2;
  const legs = row.columns.map(({ leg }) => (leg === null ? null : uprightSize(view, leg)));
  const widths = row.gaps.map(({ block, below }, k) => {
    const rightOfLeg = legs[k]?.right ?? 0;
    const leftOfNext = isWay && k === row.gaps.length - 1 ? half + 1 : row.columns[k + 1]!.leg === null ? 0 : half;
    const above = block === null ? 0 : levelSize(block).width;
    const under = below === null || isOpen(below) ? 0 : levelSize(below).width + (rightOfLeg > 0 ? half : 0);
    return Math.max(above, rightOfLeg + under + Math.max(leftOfNext, 0.5), 2) + room / 2;
  });
  spreadUnderBridges(row, widths);

  const railLifts = [0];
  for (const { below } of row.gaps) {
    if (below === null) continue;
    const outer = railLifts.length - 1;
    // Parts that follow each other in the return share a rail unless a leg stands between them.
    const isBetween = outer === 0 || row.columns.some(({ leg, rail }) => rail === outer && leg !== null);
    const step = isOpen(below) ? lead + 0.5 : railStep;
    railLifts.push(isWay && isBetween ? railLifts[outer]! + step : railLifts[outer]!);
  }
  const standing = row.columns.map(({ rail }, k) => {
    const footOn = row.gaps[k]?.below ? rail + 1 : rail;
    return legs[k] ? extraLead(row.columns[k]!.leg!) + legs[k].height + 2 * lead + railLifts[footOn]! : 0;
  });
  const under = row.gaps.map(({ block, below }, k) => {
    if (below === null || isOpen(below)) return 0;
    const clear = (block === null ? 0 : horizontalReach) + levelSize(below).rise;
    return clear + railLifts[row.columns[k + 1]!.rail]!;
  });
  const atEnd = isWay ? partLength + 2 * lead + railLifts.at(-1)! : 0;

  const rises = row.gaps.map(({ block }) => (block === null ? 0 : levelSize(block).rise));
  const bridgeLifts = liftBridges(row, rises);
  return {
    start: legs[0] ? half : 0,
    widths,
    end: legs.at(-1) ? legs.at(-1)!.right + 0.5 : 0,
    rise: Math.max(lead, ...rises),
    drop: Math.max(atEnd, ...standing, ...under),
    railLifts,
    bridgeLifts,
  };
}

const isOpen = (tree: SpTree): boolean => tree.shape === 'leaf' && tree.edge === openEdge;

/** Widens gaps evenly until every bridge fits over the ones it spans. */
function spreadUnderBridges(row: Row, widths: number[]): void {
  for (const { tree, from, to } of row.bridges) {
    const have = widths.slice(from, to).reduce((a, b) => a + b, 0);
    const missing = levelSize(tree).width - have;
    for (let k = from; k < to && missing > 0; k++) widths[k]! += Math.ceil((missing / (to - from)) * 2) / 2;
  }
}

/** Stacks bridges, the shortest lowest; leaves in `rises` what each gap then needs. */
function liftBridges(row: Row, rises: number[]): number[] {
  const lifts = row.bridges.map(() => 0);
  const shortestFirst = row.bridges
    .map((bridge, index) => ({ bridge, index }))
    .sort((a, b) => a.bridge.to - a.bridge.from - (b.bridge.to - b.bridge.from) || a.index - b.index);
  for (const { bridge, index } of shortestFirst) {
    const under = Math.max(horizontalReach, ...rises.slice(bridge.from, bridge.to));
    lifts[index] = under + horizontalReach + rowGap;
    for (let k = bridge.from; k < bridge.to; k++) rises[k] = lifts[index] + levelSize(bridge.tree).rise;
  }
  return lifts;
}

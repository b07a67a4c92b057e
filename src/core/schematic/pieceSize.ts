import type { CircuitView } from './circuitView.ts';
import {
  horizontalReach,
  horizontalSlot,
  lead,
  partAcross,
  partLength,
  rowGap,
  stackGap,
  terminalValueWidth,
  valueWidth,
} from './metrics.ts';
import { openEdge, type SpTree } from './spTree.ts';

const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0);

/** Space between an upright part's axis and the symbol of what stands to its right, without the latter's own half. */
export const uprightReach = (view: CircuitView, edge: number): number => {
  const kind = view.parts[edge]?.kind;
  if (kind === undefined) return partAcross / 2;
  const isTerminal = kind === 'amplifier' || kind === 'speaker';
  return partAcross / 2 + (isTerminal ? terminalValueWidth + 0.5 : valueWidth);
};

/** Wire between two pieces of a stack; branches side by side above and below share one cross wire. */
export const gapBetween = (upper: SpTree, lower: SpTree): number =>
  upper.shape === 'parallel' && lower.shape === 'parallel' ? 0 : stackGap;

export interface UprightSize {
  /** From the axis of the leftmost branch to the far edge of the rightmost text. */
  readonly right: number;
  readonly height: number;
}

/** Size of a piece drawn downwards: series as a stack, parallel side by side. */
export function uprightSize(view: CircuitView, tree: SpTree): UprightSize {
  if (tree.shape === 'leaf') {
    return { right: uprightReach(view, tree.edge), height: tree.edge === openEdge ? 0 : partLength };
  }
  const sizes = tree.children.map((child) => uprightSize(view, child));
  const heights = sizes.map(({ height }) => height);
  const rights = sizes.map(({ right }) => right);
  return tree.shape === 'series'
    ? {
        right: Math.max(...rights),
        height: sum(heights) + sum(tree.children.slice(1).map((child, k) => gapBetween(tree.children[k]!, child))),
      }
    : { right: sum(rights) + (partAcross / 2) * (sizes.length - 1), height: Math.max(...heights) };
}

/**
 * Extra wire above a piece that hangs from a row: where it begins with branches side by side, their upper wire has to
 * clear the names of the parts in the row.
 */
export function extraLead(tree: SpTree): number {
  if (tree.shape === 'leaf') return 0;
  if (tree.shape === 'parallel') return horizontalReach - lead + 0.5;
  const first = tree.children.find((child) => child.shape !== 'leaf' || child.edge !== openEdge);
  return first === undefined ? 0 : extraLead(first);
}

export interface LevelSize {
  readonly width: number;
  /** From the piece's own row up to the upper edge of its highest text. */
  readonly rise: number;
}

/** Size of a piece drawn from left to right: series in one row, parallel one above the other, the first one lowest. */
export function levelSize(tree: SpTree): LevelSize {
  if (tree.shape === 'leaf') return { width: horizontalSlot, rise: horizontalReach };
  const sizes = tree.children.map(levelSize);
  const widths = sizes.map(({ width }) => width);
  const rises = sizes.map(({ rise }) => rise);
  return tree.shape === 'series'
    ? { width: sum(widths), rise: Math.max(...rises) }
    : { width: Math.max(...widths) + 2, rise: sum(rises) + (horizontalReach + rowGap) * (sizes.length - 1) };
}

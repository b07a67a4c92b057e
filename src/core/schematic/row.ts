import { reverse, type SpTree } from './spTree.ts';

/** A place on a row's upper rail where something may hang. */
export interface Column {
  readonly node: string;
  /** What hangs here, down to the return rail number `rail`. */
  leg: SpTree | null;
  readonly rail: number;
}

/** Between two columns: what is in series on the upper rail, and what is in series in the return below it. */
export interface Gap {
  readonly block: SpTree | null;
  /** From the outer return rail at its left to the inner one at its right. */
  readonly below: SpTree | null;
}

/** A piece that bypasses part of the upper rail: drawn above it, from one column to a later one. */
export interface Bridge {
  readonly tree: SpTree;
  readonly from: number;
  readonly to: number;
}

/** An upper rail with parts in series, return rails below it from the outermost inwards, and legs between the two. */
export interface Row {
  readonly columns: Column[];
  /** One fewer than columns. */
  readonly gaps: Gap[];
  readonly rails: string[];
  readonly bridges: Bridge[];
}

export const emptyRow = (hot: string, ret: string): Row => ({
  columns: [{ node: hot, leg: null, rail: 0 }],
  gaps: [],
  rails: [ret],
  bridges: [],
});

export const lastColumn = (row: Row): Column => row.columns.at(-1)!;
export const hotEnd = (row: Row): string => lastColumn(row).node;
export const innerReturn = (row: Row): string => row.rails.at(-1)!;

/** Opens a column at the row's right end, on the same node. */
export function addColumn(row: Row): void {
  row.gaps.push({ block: null, below: null });
  row.columns.push({ node: hotEnd(row), leg: null, rail: row.rails.length - 1 });
}

/** Hangs a leg from the row's right end. */
export function addLeg(row: Row, leg: SpTree): void {
  if (lastColumn(row).leg !== null || lastColumn(row).rail !== row.rails.length - 1) addColumn(row);
  lastColumn(row).leg = leg;
}

/** Puts parts in series: on the upper rail, in the return (from the outer to the inner rail), or both. */
export function addPass(row: Row, block: SpTree | null, below: SpTree | null): void {
  if (below !== null) row.rails.push(below.to);
  row.gaps.push({ block, below });
  row.columns.push({ node: block?.to ?? hotEnd(row), leg: null, rail: row.rails.length - 1 });
}

/**
 * Adds a piece as a bridge if both its ends are on the row's upper rail; says whether it was. The tree is turned to run
 * from left to right.
 */
export function addBridge(row: Row, tree: SpTree): boolean {
  const [first, second] = [tree.from, tree.to].map((node) => row.columns.findIndex((column) => column.node === node));
  if (first === undefined || second === undefined || first < 0 || second < 0) return false;
  const run = first < second ? tree : reverse(tree);
  const from = row.columns.findLastIndex((column) => column.node === run.from);
  row.bridges.push({ tree: run, from, to: Math.max(first, second) });
  return true;
}

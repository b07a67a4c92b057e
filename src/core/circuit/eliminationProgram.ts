import type { EliminationProgram } from './compiledCircuit.ts';

/** Operations of `steps`: each takes five numbers, the operation and four arguments. */
export const PIVOT = 0; // slot: its inverse takes its place
export const MULTIPLIER = 1; // source slot, target slot, pivot row, row: target = source / pivot; rhs[row] -= target rhs[pivot]
export const DIAGONAL = 2; // target, left, right: target -= left right, watched
export const UPDATE = 3; // target, left, right: target -= left right
export const STEP_LENGTH = 5;
/** `back` and `transposed`: row, slot, other row: x[row] -= slot x[other]; other row -1: x[row] *= slot. */
export const BACK_LENGTH = 3;

/** Slots of the two entries that couple a pair of rows. */
export interface PairSlots {
  readonly upper: (row: number, later: number) => number;
  readonly lower: (row: number, later: number) => number;
  readonly count: number;
}

/** Numbers the entries of the filled pattern: diagonals, then for each coupled pair the upper and the lower entry. */
export function pairSlots(later: readonly (readonly number[])[]): PairSlots {
  const size = later.length;
  const slotOf = new Map<number, number>();
  let next = size;
  later.forEach((rows, k) => {
    for (const i of rows) {
      slotOf.set(k * size + i, next);
      next += 2;
    }
  });
  const upper = (row: number, other: number): number => slotOf.get(row * size + other)!;
  return { upper, lower: (row, other) => upper(row, other) + 1, count: next };
}

/**
 * Writes the elimination as flat lists of operations, A = (1 + M) U with M strictly lower and U upper, both in place.
 * A symmetric matrix uses its upper entries only; its lower slots then hold the multipliers.
 */
export function eliminationProgram(
  later: readonly (readonly number[])[],
  slots: PairSlots,
  symmetric: boolean,
  branchesAt: (row: number) => readonly number[],
): EliminationProgram {
  const size = later.length;
  const entry = (i: number, j: number): number => (i < j ? slots.upper(i, j) : slots.lower(j, i));
  const steps: number[] = [];
  later.forEach((rows, k) => {
    steps.push(PIVOT, k, 0, 0, 0);
    for (const i of rows) {
      const source = symmetric ? slots.upper(k, i) : slots.lower(k, i);
      steps.push(MULTIPLIER, source, slots.lower(k, i), k, i);
      for (const j of rows) {
        if (j === i) steps.push(DIAGONAL, i, slots.lower(k, i), slots.upper(k, j), 0);
        else if (j > i || !symmetric) steps.push(UPDATE, entry(i, j), slots.lower(k, i), slots.upper(k, j), 0);
      }
    }
  });
  const back: number[] = [];
  for (let k = size - 1; k >= 0; k--) {
    for (const j of later[k]!) back.push(k, slots.upper(k, j), j);
    back.push(k, k, -1);
  }
  // U' y = b forwards, then (1 + M') x = y backwards.
  const transposed: number[] = [];
  for (let k = 0; k < size; k++) {
    transposed.push(k, k, -1);
    for (const j of later[k]!) transposed.push(j, slots.upper(k, j), k);
  }
  for (let k = size - 1; k >= 0; k--) for (const i of later[k]!) transposed.push(k, slots.lower(k, i), i);
  return {
    size,
    slots: slots.count,
    steps: Int32Array.from(steps),
    back: Int32Array.from(back),
    transposed: Int32Array.from(transposed),
    lastPivots: later.flatMap((rows, row) => (rows.length === 0 ? [{ row, branches: branchesAt(row) }] : [])),
  };
}

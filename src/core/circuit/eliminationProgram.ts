import type { EliminationProgram, StampEntry } from './compiledCircuit.ts';

// Operations of `steps`, each followed by its arguments and padded to STEP_LENGTH.
/** Pivot: its inverse takes its place. */
export const INVERT = 0;
/** Source, target, pivot: target = source / pivot. */
export const MULTIPLY = 1;
/** Target, left, right: target -= left × right, watched. */
export const DIAGONAL = 2;
/** Target, left, right: target -= left × right. */
export const UPDATE = 3;
/** Pivot, entry, multiplier, diagonal: all of the above for a pivot that couples to one later row. */
export const PIVOT_ONE = 4;
/** Pivot, two times entry, multiplier and diagonal, and the entry between the two: the same for two later rows. */
export const PIVOT_TWO = 5;
/** Pivot, branch, sign, multiplier, diagonal: as PIVOT_ONE, the entry being sign × the branch's tabulated admittance. */
export const PIVOT_BRANCH = 6;
export const STEP_LENGTH = 9;

// Operations of `forward`, `back` and `transposed` on rows of the unknowns.
/** Row, slot: x[row] *= slot. */
export const SCALE = 0;
/** Row, slot, other: x[row] -= slot × x[other]. */
export const SUBTRACT = 1;
/** Row, slot, other: x[row] = -slot × x[other]. */
export const SET_ONE = 2;
/** Row, slot, other, slot, other: x[row] = -slot × x[other] - slot × x[other]. */
export const SET_TWO = 3;
export const SUBSTITUTION_LENGTH = 6;

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

/** What the elimination of a circuit is written from. */
export interface Elimination {
  readonly later: readonly (readonly number[])[];
  readonly slots: PairSlots;
  readonly symmetric: boolean;
  /** Rows with a right-hand side of their own. */
  readonly excitedRows: ReadonlySet<number>;
  /** By slot. */
  readonly entries: readonly StampEntry[];
}

/**
 * Writes the elimination as flat lists of operations, A = (1 + M) U with M strictly lower and U upper, both in place.
 * A symmetric matrix uses its upper entries only; its lower slots then hold the multipliers, which are also the rows of U
 * over their pivots. Right-hand sides that stay 0 are not computed, and an entry that is one tabulated admittance is read
 * where it stands.
 */
export function eliminationProgram(elimination: Elimination): EliminationProgram {
  const { later, slots, symmetric, excitedRows } = elimination;
  const size = later.length;
  const excited = new Uint8Array(size);
  const forward = new OperationList(SUBSTITUTION_LENGTH);
  later.forEach((rows, k) => {
    if (excitedRows.has(k)) excited[k] = 1;
    if (excited[k] !== 1) return;
    for (const i of rows) {
      excited[i] = 1;
      forward.add(SUBTRACT, i, slots.lower(k, i), k);
    }
  });
  const { steps, readInPlace } = eliminationSteps(elimination);
  const multipliers = new Set(symmetric ? later.flatMap((rows, k) => rows.map((i) => slots.lower(k, i))) : []);
  return {
    size,
    slots: slots.count,
    excited,
    steps,
    forward: forward.packed(),
    back: symmetric ? backOverMultipliers(later, slots, excited) : backOverUpper(later, slots),
    transposed: symmetric ? transposedOverMultipliers(later, slots) : transposedOverUpper(later, slots),
    last: Uint8Array.from(later, (rows) => (rows.length === 0 ? 1 : 0)),
    filled: elimination.entries
      .map(({ slot }) => slot)
      .filter((slot) => !multipliers.has(slot) && !readInPlace.has(slot)),
  };
}

function eliminationSteps({ later, slots, symmetric, entries }: Elimination): {
  readonly steps: Int32Array;
  readonly readInPlace: ReadonlySet<number>;
} {
  const steps = new OperationList(STEP_LENGTH);
  const readInPlace = new Set<number>();
  const updated = new Set<number>();
  const entry = (i: number, j: number): number => (i < j ? slots.upper(i, j) : slots.lower(j, i));
  later.forEach((rows, k) => {
    const [i, j] = rows;
    if (symmetric && i !== undefined && rows.length <= 2) {
      const upper = slots.upper(k, i);
      const { admittances, constants, sign } = entries[upper]!;
      if (j !== undefined) {
        updated.add(entry(i, j));
        const second = [slots.upper(k, j), slots.lower(k, j), j, entry(i, j)];
        steps.add(PIVOT_TWO, k, upper, slots.lower(k, i), i, ...second);
      } else if (admittances.length === 1 && constants.length === 0 && !updated.has(upper)) {
        readInPlace.add(upper);
        steps.add(PIVOT_BRANCH, k, admittances[0]!, sign, slots.lower(k, i), i);
      } else steps.add(PIVOT_ONE, k, upper, slots.lower(k, i), i);
      return;
    }
    steps.add(INVERT, k);
    for (const row of rows) {
      const multiplier = slots.lower(k, row);
      steps.add(MULTIPLY, symmetric ? slots.upper(k, row) : multiplier, multiplier, k);
      for (const column of rows) {
        if (column === row) steps.add(DIAGONAL, row, multiplier, slots.upper(k, row));
        else if (column > row || !symmetric) {
          updated.add(entry(row, column));
          steps.add(UPDATE, entry(row, column), multiplier, slots.upper(k, column));
        }
      }
    }
  });
  return { steps: steps.packed(), readInPlace };
}

/** x[k] = b[k] / pivot - Σ multiplier × x[later], where b[k] is 0 for rows that no source reaches. */
function backOverMultipliers(later: readonly (readonly number[])[], slots: PairSlots, excited: Uint8Array): Int32Array {
  const back = new OperationList(SUBSTITUTION_LENGTH);
  for (let k = later.length - 1; k >= 0; k--) {
    const [first, second, ...others] = later[k]!;
    const term = (j: number): [number, number] => [slots.lower(k, j), j];
    if (excited[k] === 1 || first === undefined) {
      back.add(SCALE, k, k);
      for (const j of later[k]!) back.add(SUBTRACT, k, ...term(j));
    } else if (second === undefined) back.add(SET_ONE, k, ...term(first));
    else {
      back.add(SET_TWO, k, ...term(first), ...term(second));
      for (const j of others) back.add(SUBTRACT, k, ...term(j));
    }
  }
  return back.packed();
}

/** x[k] = (b[k] - Σ upper × x[later]) / pivot */
function backOverUpper(later: readonly (readonly number[])[], slots: PairSlots): Int32Array {
  const back = new OperationList(SUBSTITUTION_LENGTH);
  for (let k = later.length - 1; k >= 0; k--) {
    for (const j of later[k]!) back.add(SUBTRACT, k, slots.upper(k, j), j);
    back.add(SCALE, k, k);
  }
  return back.packed();
}

/** A symmetric matrix is its own transpose: the ordinary substitutions for any right-hand side. */
function transposedOverMultipliers(later: readonly (readonly number[])[], slots: PairSlots): Int32Array {
  const list = new OperationList(SUBSTITUTION_LENGTH);
  later.forEach((rows, k) => {
    for (const i of rows) list.add(SUBTRACT, i, slots.lower(k, i), k);
  });
  for (let k = later.length - 1; k >= 0; k--) {
    list.add(SCALE, k, k);
    for (const i of later[k]!) list.add(SUBTRACT, k, slots.lower(k, i), i);
  }
  return list.packed();
}

/** U' y = b forwards, then (1 + M') x = y backwards. */
function transposedOverUpper(later: readonly (readonly number[])[], slots: PairSlots): Int32Array {
  const list = new OperationList(SUBSTITUTION_LENGTH);
  later.forEach((rows, k) => {
    list.add(SCALE, k, k);
    for (const j of rows) list.add(SUBTRACT, j, slots.upper(k, j), k);
  });
  for (let k = later.length - 1; k >= 0; k--) for (const i of later[k]!) list.add(SUBTRACT, k, slots.lower(k, i), i);
  return list.packed();
}

/** Operations of one length, one behind the other. */
class OperationList {
  private readonly length: number;
  private readonly numbers: number[] = [];

  constructor(length: number) {
    this.length = length;
  }

  add(...operation: number[]): void {
    for (let i = 0; i < this.length; i++) this.numbers.push(operation[i] ?? 0);
  }

  packed(): Int32Array {
    return Int32Array.from(this.numbers);
  }
}

import type { Problem } from '../messages/problem.ts';
import type { Branch } from './branch.ts';

/** What one pass of the elimination does, as flat lists: see eliminationProgram.ts. */
export interface EliminationProgram {
  /** Number of unknown potentials. */
  readonly size: number;
  /** Number of stored matrix entries: diagonals first (slot = row), then pairs above and below the diagonal. */
  readonly slots: number;
  readonly steps: Int32Array;
  readonly forward: Int32Array;
  readonly back: Int32Array;
  readonly transposed: Int32Array;
  /** Rows whose right-hand side sources reach, themselves or through the elimination; the others stay 0. */
  readonly excited: Uint8Array;
  /** 1 for rows with no later row to couple to, one in each separate piece of the network. */
  readonly last: Uint8Array;
  /** Slots that are filled before the elimination; others are read from the tabulated admittances themselves. */
  readonly filled: readonly number[];
}

/** One entry of the matrix: the sum of what its branches add, times the sign. */
export interface StampEntry {
  readonly slot: number;
  readonly sign: number;
  readonly admittances: readonly number[];
  /** Branches with constant values, each with a sign of its own. */
  readonly constants: readonly { readonly branch: number; readonly sign: number }[];
}

/** Where each branch enters the equations: see stampProgram.ts. */
export interface StampProgram {
  readonly entries: readonly StampEntry[];
  readonly excitations: Int32Array;
}

/** A circuit whose topology is worked out. It stays valid for other values of the same branches. */
export interface CompiledCircuit {
  readonly branches: readonly Branch[];
  readonly indexOf: ReadonlyMap<string, number>;
  /** Row of each node's potential in a solution: unknown ones in order of elimination, then known ones, then the return. */
  readonly rowOf: ReadonlyMap<string, number>;
  /** Names by row, without the return. */
  readonly nodes: readonly string[];
  readonly unknownCount: number;
  /** For each known row in turn, the index of the ideal source that sets it. */
  readonly knownBy: Int32Array;
  /** Sign given to each row's equation so that the matrix becomes symmetric; a known row has the sign of its side. */
  readonly signs: Float64Array;
  readonly symmetric: boolean;
  readonly elimination: EliminationProgram;
  readonly stamps: StampProgram;
  /** What can be solved but should be said: raised resistances, branches that carry no current. */
  readonly remarks: readonly Problem[];
}

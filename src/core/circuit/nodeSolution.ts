import { RETURN } from './branch.ts';
import type { CompiledCircuit } from './compiledCircuit.ts';
import type { AdmittanceTable } from './tabulateAdmittances.ts';

/** A complex quantity over the sweep, split; views into a solution or the caller's own buffers. */
export interface Complexes {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** How many neighbouring frequencies are eliminated together: their entries stay in the nearest cache. */
export const TILE = 64;

/** The potentials of every node over a sweep. Buffers are reused by `solveInto`. */
export interface NodeSolution {
  readonly compiled: CompiledCircuit;
  readonly table: AdmittanceTable;
  readonly frequencyCount: number;
  /** Row r begins at r × stride; rows as in `compiled.rowOf`. V rms, or Pa rms of acoustical nodes. */
  readonly potentials: Complexes;
  readonly stride: number;
  /** Factors of one tile at a time, each slot a stretch of TILE numbers. */
  readonly scratch: Complexes;
  /** Factors of each tile in turn, once an adjoint solve has asked for them: see adjoint.ts. */
  readonly factors: { kept: Complexes | null; areValid: boolean };
  /** 1 where the frequency was solved densely with pivoting. */
  readonly suspect: Uint8Array;
  /** Potential of a node re the return; throws for a name that the circuit does not have. */
  potential(node: string): Complexes;
}

/** Room for the solution of a compiled circuit over the table's frequencies, taken from `earlier` where that fits. */
export function nodeSolution(compiled: CompiledCircuit, table: AdmittanceTable, earlier?: NodeSolution): NodeSolution {
  const frequencyCount = table.omegas.length;
  // Rows a power of two apart would all fall on the same lines of the cache.
  const stride = (Math.ceil(frequencyCount / 64) | 1) * 64 + 8;
  const rows = compiled.nodes.length + 1;
  const potentials = room(rows * stride, earlier?.potentials);
  return {
    compiled,
    table,
    frequencyCount,
    potentials,
    stride,
    scratch: room(compiled.elimination.slots * TILE, earlier?.scratch),
    factors: { kept: earlier?.factors.kept ?? null, areValid: false },
    suspect: earlier?.suspect.length === frequencyCount ? earlier.suspect : new Uint8Array(frequencyCount),
    potential: (node) => {
      const begin = potentialRow(compiled, node) * stride;
      return {
        re: potentials.re.subarray(begin, begin + frequencyCount),
        im: potentials.im.subarray(begin, begin + frequencyCount),
      };
    },
  };
}

/** Split buffers of this length: the old ones where they fit. */
export const room = (length: number, old: Complexes | null | undefined): Complexes =>
  old?.re.length === length ? old : { re: new Float64Array(length), im: new Float64Array(length) };

/** Row of a node's potential. */
export function potentialRow(compiled: CompiledCircuit, node: string): number {
  if (node === RETURN) return compiled.nodes.length;
  const row = compiled.rowOf.get(node);
  if (row === undefined) throw new RangeError(`The circuit has no node ${node}.`);
  return row;
}

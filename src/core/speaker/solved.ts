import type { AdmittanceTable, CompiledCircuit, NodeSolution } from '../circuit/index.ts';

/** A solved sweep with what it was solved from. */
export interface Solved {
  readonly compiled: CompiledCircuit;
  readonly table: AdmittanceTable;
  readonly solution: NodeSolution;
}

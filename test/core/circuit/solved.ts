import {
  type Branch,
  compileCircuit,
  type NodeSolution,
  solveCircuit,
  tabulateAdmittances,
} from '../../../src/core/circuit/index.ts';
import type { Result } from '../../../src/core/messages/problem.ts';

/** The value of a result that must be there. */
export function succeeded<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

/** Compiles, tabulates and solves in one go. */
export function solved(branches: readonly Branch[], omegas: Float64Array): NodeSolution {
  const compiled = succeeded(compileCircuit(branches));
  return succeeded(solveCircuit(compiled, tabulateAdmittances(compiled, omegas)));
}

/** Greatest magnitude over the sweep of these nodes' potentials. */
export function greatestPotential(solution: NodeSolution, nodes: readonly string[]): number {
  let greatest = 0;
  for (const node of nodes) {
    const { re, im } = solution.potential(node);
    for (let f = 0; f < re.length; f++) greatest = Math.max(greatest, Math.hypot(re[f]!, im[f]!));
  }
  return greatest;
}

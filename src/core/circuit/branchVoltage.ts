import type { Complexes, NodeSolution } from './nodeSolution.ts';
import { potentialRow } from './nodeSolution.ts';

/** Writes v(a) - v(b) over the sweep into `out`. */
export function voltageBetweenInto(out: Complexes, solution: NodeSolution, a: string, b: string): void {
  const { potentials, stride, compiled, frequencyCount } = solution;
  const rowA = potentialRow(compiled, a) * stride;
  const rowB = potentialRow(compiled, b) * stride;
  for (let f = 0; f < frequencyCount; f++) {
    out.re[f] = potentials.re[rowA + f]! - potentials.re[rowB + f]!;
    out.im[f] = potentials.im[rowA + f]! - potentials.im[rowB + f]!;
  }
}

/**
 * Writes the voltage of a branch, first node minus second (a gyrator: its primary), V rms, into `out`.
 * @example branchVoltageInto({ re, im }, solution, 'R1')
 */
export function branchVoltageInto(out: Complexes, solution: NodeSolution, id: string): void {
  const branch = branchOf(solution, id);
  const [a, b] = branch.kind === 'gyrator' ? branch.primary : branch.nodes;
  voltageBetweenInto(out, solution, a, b);
}

/** The branch of that id; throws where the circuit has none. */
export function branchOf(solution: NodeSolution, id: string) {
  const index = solution.compiled.indexOf.get(id);
  if (index === undefined) throw new RangeError(`The circuit has no branch ${id}.`);
  return solution.compiled.branches[index]!;
}

import { type Problem, problem } from '../messages/problem.ts';
import { type Branch, RETURN } from './branch.ts';
import { constantValue, sourceVoltage } from './branchValue.ts';
import type { CompiledCircuit } from './compiledCircuit.ts';
import { DenseSystem } from './denseSystem.ts';
import type { Complexes, NodeSolution } from './nodeSolution.ts';
import type { AdmittanceTable } from './tabulateAdmittances.ts';

/**
 * Solves one frequency densely, with row exchange on an equilibrated matrix, and writes the potentials (or, with
 * `transposed`, the adjoint potentials, whose right-hand side stands in `x`) into the rows of `x`.
 * Returns a `circuit.singular` Problem that names a node where there is no unique solution.
 */
export function solveDensely(solution: NodeSolution, x: Complexes, f: number, transposed: boolean): Problem[] {
  const { compiled, table, stride } = solution;
  const size = compiled.unknownCount;
  const system = new DenseSystem(size);
  compiled.branches.forEach((branch, index) => {
    addBranch(system, compiled, table, branch, index, f, transposed);
  });
  if (transposed) {
    for (let i = 0; i < size; i++) {
      system.rightRe[i] = x.re[i * stride + f]!;
      system.rightIm[i] = x.im[i * stride + f]!;
    }
  }
  const free = system.solve();
  if (free >= 0) {
    const node = compiled.nodes[free]!;
    const atHz = table.omegas[f]! / (2 * Math.PI);
    return [problem('circuit.singular', { kind: 'node', id: node }, { node, atHz })];
  }
  for (let i = 0; i < size; i++) {
    x.re[i * stride + f] = system.rightRe[i]!;
    x.im[i * stride + f] = system.rightIm[i]!;
  }
  return [];
}

function addBranch(
  system: DenseSystem,
  compiled: CompiledCircuit,
  table: AdmittanceTable,
  branch: Branch,
  index: number,
  f: number,
  transposed: boolean,
): void {
  const { unknownCount } = compiled;
  const row = table.rows[index];
  const rowOf = (node: string): number => (node === RETURN ? -1 : compiled.rowOf.get(node)!);
  const isIdeal = branch.kind === 'source' && branch.resistanceOhm === 0;
  if (isIdeal) return;
  const re = row ? row.re[f]! : constantValue(branch);
  const im = row ? row.im[f]! : 0;
  const term = (at: string, node: string, sign: number): void => {
    const i = rowOf(at);
    const j = rowOf(node);
    if (i < 0 || i >= unknownCount || j < 0) return;
    if (j < unknownCount) {
      if (transposed) system.add(j, i, sign * re, sign * im);
      else system.add(i, j, sign * re, sign * im);
      return;
    }
    const source = compiled.knownBy[j - unknownCount]!;
    const voltage = sign * sourceVoltage(compiled.branches[source]!);
    const driveRe = table.drives.get(source)?.re[f] ?? 1;
    const driveIm = table.drives.get(source)?.im[f] ?? 0;
    system.rightRe[i]! -= voltage * (re * driveRe - im * driveIm);
    system.rightIm[i]! -= voltage * (re * driveIm + im * driveRe);
  };
  if (branch.kind === 'gyrator') {
    for (const i of [0, 1] as const) {
      for (const j of [0, 1] as const) {
        term(branch.primary[i], branch.secondary[j], i === j ? 1 : -1);
        term(branch.secondary[i], branch.primary[j], i === j ? -1 : 1);
      }
    }
    return;
  }
  const [a, b] = branch.nodes;
  if (a === b) return;
  term(a, a, 1);
  term(b, b, 1);
  term(a, b, -1);
  term(b, a, -1);
  if (branch.kind !== 'source') return;
  const drive = branch.voltageV / branch.resistanceOhm;
  const plus = rowOf(a);
  const minus = rowOf(b);
  const driveRe = drive * (table.drives.get(index)?.re[f] ?? 1);
  const driveIm = drive * (table.drives.get(index)?.im[f] ?? 0);
  for (const [i, sign] of [
    [plus, 1],
    [minus, -1],
  ] as const) {
    if (i < 0 || i >= unknownCount) continue;
    system.rightRe[i]! += sign * driveRe;
    system.rightIm[i]! += sign * driveIm;
  }
}

import { type Problem, problem } from '../messages/problem.ts';
import { type GyratorBranch, RETURN, type SourceBranch } from './branch.ts';
import { constantValue, sourceVoltage } from './branchValue.ts';
import { DenseSystem } from './denseSystem.ts';
import type { Complexes, NodeSolution } from './nodeSolution.ts';

// Nodal equations lose what ties a piece of the network to the rest where the admittances within it are far above the tie:
// the sum on the diagonal has no digits left for it. So here the currents of the branches are unknowns too: Kirchhoff's law
// over currents, and v_a - v_b - z i = 0 (or y (v_a - v_b) - i = 0, whichever has the smaller number) for each branch, and
// nothing is added up before it has to be.
// Source: C. W. Ho, A. E. Ruehli, P. A. Brennan, "The modified nodal approach to network analysis", 1975 (from memory).

/**
 * Solves one frequency densely, with row exchange on an equilibrated matrix, and writes the potentials (or, with
 * `transposed`, the adjoint potentials, whose right-hand side stands in `x`) into the rows of `x`.
 * Returns a `circuit.singular` Problem that names a node where there is no unique solution.
 */
export function solveDensely(solution: NodeSolution, x: Complexes, f: number, transposed: boolean): Problem[] {
  const { compiled, table, stride } = solution;
  const nodes = compiled.unknownCount;
  // Currents come first, so that a column without a pivot is a node's.
  const carriers = compiled.branches.flatMap((branch, index) =>
    branch.kind === 'admittance' && branch.nodes[0] !== branch.nodes[1] ? [index] : [],
  );
  const currents = carriers.length;
  const system = new DenseSystem(currents + nodes);
  const equations: Equations = { system, solution, f, transposed, currents };
  carriers.forEach((index, k) => {
    addCarrier(equations, index, k);
  });
  compiled.branches.forEach((branch, index) => {
    if (branch.kind !== 'admittance') addConstantBranch(equations, branch, index);
  });
  if (transposed) {
    for (let i = 0; i < nodes; i++) {
      system.rightRe[currents + i] = x.re[i * stride + f]!;
      system.rightIm[currents + i] = x.im[i * stride + f]!;
    }
  }
  const free = system.solve();
  if (free >= 0) {
    const node = compiled.nodes[Math.max(0, free - currents)]!;
    const atHz = table.omegas[f]! / (2 * Math.PI);
    return [problem('circuit.singular', { kind: 'node', id: node }, { node, atHz })];
  }
  for (let i = 0; i < nodes; i++) {
    x.re[i * stride + f] = system.rightRe[currents + i]!;
    x.im[i * stride + f] = system.rightIm[currents + i]!;
  }
  return [];
}

interface Equations {
  readonly system: DenseSystem;
  readonly solution: NodeSolution;
  readonly f: number;
  readonly transposed: boolean;
  readonly currents: number;
}

/** Row of a node: -1 for the return. */
const rowOf = ({ compiled }: NodeSolution, node: string): number => (node === RETURN ? -1 : compiled.rowOf.get(node)!);

/** Adds an entry, or its product with a known potential to the right-hand side; `i` and `j` count the currents too. */
function addEntry(
  { system, solution, f, transposed, currents }: Equations,
  i: number,
  j: number,
  re: number,
  im: number,
) {
  const { compiled, table } = solution;
  if (i >= currents + compiled.unknownCount) return;
  if (j < currents + compiled.unknownCount) {
    if (transposed) system.add(j, i, re, im);
    else system.add(i, j, re, im);
    return;
  }
  if (transposed) return;
  const source = compiled.knownBy[j - currents - compiled.unknownCount]!;
  const voltage = sourceVoltage(compiled.branches[source]!);
  const driveRe = table.drives.get(source)?.re[f] ?? 1;
  const driveIm = table.drives.get(source)?.im[f] ?? 0;
  system.rightRe[i]! -= voltage * (re * driveRe - im * driveIm);
  system.rightIm[i]! -= voltage * (re * driveIm + im * driveRe);
}

/** A branch whose current is the unknown `k`. */
function addCarrier(equations: Equations, index: number, k: number): void {
  const { solution, f, currents } = equations;
  const row = solution.table.rows[index]!;
  const re = row.re[f]!;
  const im = row.im[f]!;
  const squared = re * re + im * im;
  const isStrong = squared > 1;
  if (isStrong) addEntry(equations, k, k, -re / squared, im / squared);
  else addEntry(equations, k, k, -1, 0);
  row.branch.nodes.forEach((node, end) => {
    const at = rowOf(solution, node);
    if (at < 0) return;
    const sign = end === 0 ? 1 : -1;
    addEntry(equations, currents + at, k, sign, 0);
    addEntry(equations, k, currents + at, isStrong ? sign : sign * re, isStrong ? 0 : sign * im);
  });
}

/** Gyrators and sources with a resistance, whose entries are real and the same at every frequency. */
function addConstantBranch(equations: Equations, branch: GyratorBranch | SourceBranch, index: number): void {
  const { system, solution, f, transposed, currents } = equations;
  const { compiled, table } = solution;
  if (branch.kind === 'source' && branch.resistanceOhm === 0) return;
  const value = constantValue(branch);
  const term = (at: string, node: string, sign: number): void => {
    const i = rowOf(solution, at);
    const j = rowOf(solution, node);
    if (i >= 0 && j >= 0) addEntry(equations, currents + i, currents + j, sign * value, 0);
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
  if (transposed) return;
  const drive = branch.voltageV / branch.resistanceOhm;
  const plus = rowOf(solution, a);
  const minus = rowOf(solution, b);
  const driveRe = drive * (table.drives.get(index)?.re[f] ?? 1);
  const driveIm = drive * (table.drives.get(index)?.im[f] ?? 0);
  for (const [i, sign] of [
    [plus, 1],
    [minus, -1],
  ] as const) {
    if (i < 0 || i >= compiled.unknownCount) continue;
    system.rightRe[currents + i]! += sign * driveRe;
    system.rightIm[currents + i]! += sign * driveIm;
  }
}

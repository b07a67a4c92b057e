import { fail, type Problem, problem, type Result, succeed } from '../messages/problem.ts';
import { sourceVoltage } from './branchValue.ts';
import type { CompiledCircuit } from './compiledCircuit.ts';
import { solveDensely } from './denseSolve.ts';
import { solveTile } from './eliminateTile.ts';
import { addScaled } from './eliminationKernel.ts';
import { fillPlan } from './fillPlan.ts';
import { type NodeSolution, nodeSolution, TILE } from './nodeSolution.ts';
import type { AdmittanceTable } from './tabulateAdmittances.ts';

// Nodal analysis. Let A hold, for each branch, +1 at its first node and -1 at its second. Branch voltages are A'v, branch
// currents y A'v, and Kirchhoff's current law A i = 0 gives A y A' v = b: one equation for each node of unknown
// potential. A branch between nodes a and b adds y to the diagonal entries aa and bb and takes it from ab and ba. An
// ideal source sets a potential, whose terms move to the right; one with resistance R adds 1/R and drives V/R into its
// node. A gyrator, i1 = g v2 and i2 = -g v1, adds four entries ±g across the diagonal. For any v the real part of v'*Yv
// is the power lost in the branches, so it is never negative; elimination keeps that (a Schur complement is the same
// network seen from fewer nodes), so |a_ij|² stays bounded by the diagonals and any order of diagonal pivots is safe,
// except where a pivot nearly vanishes: an inner node between lossless L and C at their resonance. There the update of
// a diagonal entry dwarfs the entry, which is what the watched steps look for; the ratio does not depend on the units of
// a node, so siemens and m³/s/Pa may meet in one matrix. The other danger is a piece of the network tied to the rest by far
// less than what lies within it: the tie drowns in the sum on the diagonal, and a pivot shows it by being a millionth of what
// went in. Such frequencies are solved again with row exchange and the branches' currents as unknowns: see denseSolve.ts.

/**
 * Potentials of all nodes over the sweep. Accurate to about 1e-12 of the largest potential of the same kind.
 * Problems: `circuit.not-finite` names a branch without a finite admittance, `circuit.singular` a node whose potential
 * nothing determines at some frequency.
 * Source: C. W. Ho, A. E. Ruehli, P. A. Brennan, "The modified nodal approach to network analysis", 1975, section II
 * (from memory), with the derivation above.
 * @example const solved = solveCircuit(compiled, tabulateAdmittances(compiled, omegas));
 */
export function solveCircuit(compiled: CompiledCircuit, table: AdmittanceTable): Result<NodeSolution> {
  return run(nodeSolution(compiled, table));
}

/** The same in the buffers of an earlier solution where they fit; that solution is void afterwards. */
export function solveInto(
  earlier: NodeSolution,
  compiled: CompiledCircuit,
  table: AdmittanceTable,
): Result<NodeSolution> {
  return run(nodeSolution(compiled, table, earlier));
}

function run(solution: NodeSolution): Result<NodeSolution> {
  const { compiled, table, potentials, suspect, frequencyCount, stride } = solution;
  const plan = fillPlan(compiled, table);
  suspect.fill(0);
  compiled.knownBy.forEach((source, k) => {
    const begin = (compiled.unknownCount + k) * stride;
    const voltage = sourceVoltage(compiled.branches[source]!);
    const drive = table.drives.get(source);
    potentials.re.fill(drive === undefined ? voltage : 0, begin, begin + frequencyCount);
    potentials.im.fill(0, begin, begin + frequencyCount);
    if (drive === undefined) return;
    addScaled(potentials.re, begin, drive.re, 0, voltage, frequencyCount);
    addScaled(potentials.im, begin, drive.im, 0, voltage, frequencyCount);
  });
  const ground = compiled.nodes.length * stride;
  potentials.re.fill(0, ground, ground + frequencyCount);
  potentials.im.fill(0, ground, ground + frequencyCount);
  for (let first = 0; first < frequencyCount; first += TILE) solveTile(solution, plan, first);

  const suspects: number[] = [];
  for (let f = 0; f < frequencyCount; f++) if (suspect[f] === 1) suspects.push(f);
  const broken = notFinite(solution, suspects);
  if (broken.length > 0) return fail(...broken);
  for (const f of suspects) {
    const problems = solveDensely(solution, potentials, f, false);
    if (problems.length > 0) return fail(...problems);
  }
  return succeed(solution);
}

/**
 * Branches whose admittance is NaN or infinite somewhere. Such a number makes every pivot that it reaches suspect, so
 * only suspect frequencies need be searched, and what lies between nodes of known potential, which no pivot meets.
 */
function notFinite({ compiled, table }: NodeSolution, suspects: readonly number[]): Problem[] {
  const isKnown = (node: string): boolean => compiled.rowOf.get(node)! >= compiled.unknownCount;
  return table.rows.flatMap((row) => {
    if (row === null) return [];
    const { id, nodes } = row.branch;
    const isBad = (f: number): boolean => !Number.isFinite(row.re[f]!) || !Number.isFinite(row.im[f]!);
    const bad = nodes.every(isKnown) ? row.re.some((_, f) => isBad(f)) : suspects.some(isBad);
    return bad ? [problem('circuit.not-finite', { kind: 'part', id }, { part: id })] : [];
  });
}

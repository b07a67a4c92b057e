import type { Branch } from './branch.ts';
import { branchOf } from './branchVoltage.ts';
import { solveDensely } from './denseSolve.ts';
import { factoriseTile, substitute } from './eliminateTile.ts';
import { fillPlan } from './fillPlan.ts';
import { type Complexes, type NodeSolution, potentialRow, room, TILE } from './nodeSolution.ts';

// Y v = b. For an output V = Σ e_n v_n and a branch value p: dV/dp = Σ e_n dv_n/dp, and dv/dp = -Y⁻¹ (dY/dp) v because
// b does not depend on p (a known potential that dY meets counts in v). With Yᵀu = e this is -uᵀ (dY/dp) v, and since a
// branch enters Y only between its two nodes, dV/dp = -(u_a - u_b) (v_a - v_b) dy/dp. One solve with the transposed
// factors therefore serves every value of every part.

/** One term of an output: `weight` times the potential of `node`; a row over the sweep, or one number for all of it. */
export interface OutputTerm {
  readonly node: string;
  readonly weight: number | Complexes;
}

/** What an output's adjoint solve leaves: u at every node, laid out as the potentials are. */
export interface AdjointSolution {
  readonly solution: NodeSolution;
  readonly potentials: Complexes;
}

/**
 * Solves the adjoint circuit of the output Σ weight × potential. The first call keeps the factors for those that follow.
 * Source: S. W. Director, R. A. Rohrer, "The generalized adjoint network and network sensitivities", IEEE Trans. Circuit
 * Theory CT-16, 1969, in the matrix form above.
 * @example solveAdjoint(solution, [{ node: 'plus', weight: 1 }, { node: 'minus', weight: -1 }])
 */
export function solveAdjoint(solution: NodeSolution, output: readonly OutputTerm[]): AdjointSolution {
  const { compiled, potentials, stride, frequencyCount, suspect } = solution;
  const u = { re: new Float64Array(potentials.re.length), im: new Float64Array(potentials.im.length) };
  for (const { node, weight } of output) {
    const row = potentialRow(compiled, node);
    // A known potential does not move.
    if (row >= compiled.unknownCount) continue;
    for (let f = 0; f < frequencyCount; f++) {
      u.re[row * stride + f]! += typeof weight === 'number' ? weight : weight.re[f]!;
      if (typeof weight !== 'number') u.im[row * stride + f]! += weight.im[f]!;
    }
  }
  const dense = new Map<number, Complexes>();
  for (let f = 0; f < frequencyCount; f++) if (suspect[f] === 1) dense.set(f, column(u, solution, f));
  const factors = factorsOf(solution);
  const { slots, transposed } = compiled.elimination;
  for (let first = 0; first < frequencyCount; first += TILE) {
    substitute(solution, transposed, u, factors, first * slots, first, Math.min(TILE, frequencyCount - first));
  }
  // The factors belong to the equations with their signs turned, S Y; (S Y)ᵀ w = e gives u = S w.
  for (let row = 0; row < compiled.unknownCount; row++) {
    if (compiled.signs[row]! > 0) continue;
    for (let at = row * stride; at < row * stride + frequencyCount; at++) {
      u.re[at] = -u.re[at]!;
      u.im[at] = -u.im[at]!;
    }
  }
  for (const [f, right] of dense) {
    for (let row = 0; row < compiled.unknownCount; row++) {
      u.re[row * stride + f] = right.re[row]!;
      u.im[row * stride + f] = right.im[row]!;
    }
    if (solveDensely(solution, u, f, true).length > 0) throw new Error('A circuit that was solved has no adjoint.');
  }
  return { solution, potentials: u };
}

/**
 * Writes dV/dp over the sweep into `out`: V the output of the adjoint, p the value `name` of branch `id`.
 * Per unit of p, not per cent. Throws for a branch without such a value.
 * @example outputDerivativeInto(out, adjoint, 'C1', 'farad')
 */
export function outputDerivativeInto(out: Complexes, adjoint: AdjointSolution, id: string, name: string): void {
  const { solution, potentials: u } = adjoint;
  const { compiled, potentials: v, stride, frequencyCount, table } = solution;
  const branch = branchOf(solution, id);
  branchDerivative(branch, name)(table.omegas, out.re, out.im);
  if (branch.kind !== 'admittance') return;
  const a = potentialRow(compiled, branch.nodes[0]) * stride;
  const b = potentialRow(compiled, branch.nodes[1]) * stride;
  for (let f = 0; f < frequencyCount; f++) {
    const uRe = u.re[a + f]! - u.re[b + f]!;
    const uIm = u.im[a + f]! - u.im[b + f]!;
    const vRe = v.re[a + f]! - v.re[b + f]!;
    const vIm = v.im[a + f]! - v.im[b + f]!;
    const uvRe = uRe * vRe - uIm * vIm;
    const uvIm = uRe * vIm + uIm * vRe;
    const dRe = out.re[f]!;
    const dIm = out.im[f]!;
    out.re[f] = -(uvRe * dRe - uvIm * dIm);
    out.im[f] = -(uvRe * dIm + uvIm * dRe);
  }
}

/** The function that gives dy/dp of a branch. */
export function branchDerivative(branch: Branch, name: string) {
  const entry = branch.kind === 'admittance' ? branch.derivatives?.[name] : undefined;
  if (entry === undefined) throw new RangeError(`Branch ${branch.id} has no value ${name}.`);
  return entry.derivative;
}

/** The factors of the whole sweep: eliminated again for the first adjoint, since keeping them slows every plain solve. */
function factorsOf(solution: NodeSolution): Complexes {
  const { compiled, table, frequencyCount, factors } = solution;
  const { slots } = compiled.elimination;
  const kept = room(slots * Math.ceil(frequencyCount / TILE) * TILE, factors.kept);
  if (factors.kept === kept && factors.areValid) return kept;
  const plan = fillPlan(compiled, table);
  for (let first = 0; first < frequencyCount; first += TILE) factoriseTile(solution, plan, kept, first * slots, first);
  factors.kept = kept;
  factors.areValid = true;
  return kept;
}

function column({ re, im }: Complexes, { compiled, stride }: NodeSolution, f: number): Complexes {
  const size = compiled.unknownCount;
  return {
    re: Float64Array.from({ length: size }, (_, row) => re[row * stride + f]!),
    im: Float64Array.from({ length: size }, (_, row) => im[row * stride + f]!),
  };
}

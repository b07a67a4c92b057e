import {
  type AdjointSolution,
  type AdmittanceBranch,
  type Complexes,
  type OutputTerm,
  solveAdjoint,
} from '../../circuit/index.ts';
import { potentialRow } from '../../circuit/nodeSolution.ts';
import type { Tried } from './crossoverTrial.ts';

const complexes = (count: number): Complexes => ({ re: new Float64Array(count), im: new Float64Array(count) });

/**
 * Per variable, the voltage across its branch times dy/d ln p over the sweep: what every gradient of these values needs.
 * An inductor whose resistance follows its inductance has both in it.
 */
export function excitationsOf(tried: Tried): readonly Complexes[] {
  const { trial, table, solution, excitations, values } = tried;
  if (excitations.areValid && excitations.kept !== null) return excitations.kept;
  const count = solution.frequencyCount;
  const kept = excitations.kept ?? trial.variables.map(() => complexes(count));
  const { re: vRe, im: vIm } = solution.potentials;
  trial.variables.forEach((_, i) => {
    const row = table.rows[trial.branchIndices[i]!]!;
    const out = kept[i]!;
    logDerivativeInto(out, row.branch, values[i]!, trial.variables[i]!.dcrExponent ?? 0, table.omegas);
    const a = potentialRow(solution.compiled, row.branch.nodes[0]) * solution.stride;
    const b = potentialRow(solution.compiled, row.branch.nodes[1]) * solution.stride;
    for (let f = 0; f < count; f++) {
      const p = vRe[a + f]! - vRe[b + f]!;
      const q = vIm[a + f]! - vIm[b + f]!;
      const x = out.re[f]!;
      const y = out.im[f]!;
      out.re[f] = p * x - q * y;
      out.im[f] = p * y + q * x;
    }
  });
  excitations.kept = kept;
  excitations.areValid = true;
  return kept;
}

/** Writes dy/d ln p of a part's branch. */
export function logDerivativeInto(
  out: Complexes,
  branch: AdmittanceBranch,
  value: number,
  dcrExponent: number,
  omegas: Float64Array,
): void {
  const { ohm, farad, henry, dcrOhm } = branch.derivatives ?? {};
  const entry = ohm ?? farad ?? henry;
  if (entry === undefined) throw new RangeError(`Branch ${branch.id} has no value to vary.`);
  entry.derivative(omegas, out.re, out.im);
  scaleInPlace(out, value);
  if (dcrExponent === 0 || dcrOhm === undefined) return;
  const byResistance = complexes(omegas.length);
  dcrOhm.derivative(omegas, byResistance.re, byResistance.im);
  const factor = dcrExponent * dcrOhm.value;
  for (let f = 0; f < omegas.length; f++) {
    out.re[f]! += factor * byResistance.re[f]!;
    out.im[f]! += factor * byResistance.im[f]!;
  }
}

/** The adjoint of a complex output Σ weight × potential, for `complexDerivatives` and `realDerivatives`. */
export const adjointOf = (tried: Tried, output: readonly OutputTerm[]): AdjointSolution =>
  solveAdjoint(tried.solution, output);

/** Derivatives of a complex output with ln p, per variable over the sweep. */
export function complexDerivatives(tried: Tried, adjoint: AdjointSolution): Complexes[] {
  return derivatives(tried, adjoint, true);
}

/** Real parts of the same. */
export function realDerivatives(tried: Tried, adjoint: AdjointSolution): Float64Array[] {
  return derivatives(tried, adjoint, false).map(({ re }) => re);
}

// d out / d ln p = -(u_a - u_b) (v_a - v_b) dy/d ln p: see circuit/adjoint.ts.
function derivatives(tried: Tried, { potentials: u }: AdjointSolution, isComplex: boolean): Complexes[] {
  const { trial, solution } = tried;
  const count = solution.frequencyCount;
  return excitationsOf(tried).map((drive, i) => {
    const [first, second] = trial.parts[i]!.nodes;
    const a = potentialRow(solution.compiled, first) * solution.stride;
    const b = potentialRow(solution.compiled, second) * solution.stride;
    const out = { re: new Float64Array(count), im: isComplex ? new Float64Array(count) : NOTHING };
    for (let f = 0; f < count; f++) {
      const p = u.re[a + f]! - u.re[b + f]!;
      const q = u.im[a + f]! - u.im[b + f]!;
      out.re[f] = q * drive.im[f]! - p * drive.re[f]!;
      if (isComplex) out.im[f] = -p * drive.im[f]! - q * drive.re[f]!;
    }
    return out;
  });
}

const NOTHING = new Float64Array(0);

function scaleInPlace(out: Complexes, factor: number): void {
  for (let f = 0; f < out.re.length; f++) {
    out.re[f]! *= factor;
    out.im[f]! *= factor;
  }
}

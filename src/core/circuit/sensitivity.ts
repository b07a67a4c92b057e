import { type AdjointSolution, branchDerivative, outputDerivativeInto, solveAdjoint } from './adjoint.ts';
import { type Branch, RETURN } from './branch.ts';
import { branchCurrentInto } from './branchCurrent.ts';
import { branchOf, branchVoltageInto } from './branchVoltage.ts';
import type { Complexes, NodeSolution } from './nodeSolution.ts';
import { branchNodes } from './nodesOf.ts';
import { inputImpedance } from './sourceCurrent.ts';

/** A value of a part: the branch's id and the name of the value, `ohm`, `farad`, `henry`, `dcrOhm` ... */
export interface BranchValue {
  readonly id: string;
  readonly name: string;
}

const complexes = (count: number): Complexes => ({ re: new Float64Array(count), im: new Float64Array(count) });

/** Present size of a value; throws where the branch has no such value. */
export function branchValueOf(solution: NodeSolution, { id, name }: BranchValue): number {
  const branch = branchOf(solution, id);
  const entry = branch.kind === 'admittance' ? branch.derivatives?.[name] : undefined;
  if (entry === undefined) throw new RangeError(`Branch ${id} has no value ${name}.`);
  return entry.value;
}

/**
 * Logarithmic sensitivity d ln V / d ln p over the sweep of an output V that is given with its adjoint. The real part
 * times 8.6859 is dB per unit of ln p, the imaginary part is radians.
 * Where V is 0 the sensitivity has no meaning and is given as 0.
 * @example logSensitivity(adjoint, solution.potential('out'), { id: 'C1', name: 'farad' })
 */
export function logSensitivity(adjoint: AdjointSolution, output: Complexes, value: BranchValue): Complexes {
  const { solution } = adjoint;
  const out = complexes(solution.frequencyCount);
  outputDerivativeInto(out, adjoint, value.id, value.name);
  divideInto(out, output, branchValueOf(solution, value));
  return out;
}

/**
 * What 1 % more of a value does to an output of this logarithmic sensitivity, to first order: dB and radians.
 * @example sensitivityPerCent({ re: 1, im: 0 }).db // 0.0869
 */
export const sensitivityPerCent = (sensitivity: {
  readonly re: number;
  readonly im: number;
}): { readonly db: number; readonly phaseRad: number } => ({
  db: (0.2 / Math.LN10) * sensitivity.re,
  phaseRad: sensitivity.im / 100,
});

/**
 * d ln Zin / d ln p at a source over the sweep, for a circuit with that one source. No second solve: in a reciprocal
 * circuit dI/dp = v_b² dy/dp for 1 V at the terminals, so d ln Zin / d ln p = -Zin p (v_b / V)² dy/dp. Across a gyrator the
 * adjoint has the opposite sign, which the signs of the equations tell.
 * Throws for circuits whose gyrators lead back to where they began: there no sign makes the equations symmetric.
 * @example impedanceLogSensitivity(solution, 'V1', { id: 'L1', name: 'henry' })
 */
export function impedanceLogSensitivity(solution: NodeSolution, sourceId: string, value: BranchValue): Complexes {
  const { frequencyCount, table, compiled } = solution;
  if (!compiled.symmetric) throw new RangeError('The gyrators of this circuit form a loop.');
  const branch = branchOf(solution, value.id);
  const sign = sideOf(solution, branch) * sideOf(solution, branchOf(solution, sourceId));
  const factor = -sign * branchValueOf(solution, value);
  const out = complexes(frequencyCount);
  branchDerivative(branch, value.name)(table.omegas, out.re, out.im);
  const share = complexes(frequencyCount);
  const terminals = complexes(frequencyCount);
  branchVoltageInto(share, solution, value.id);
  branchVoltageInto(terminals, solution, sourceId);
  divideInto(share, terminals, 1);
  multiplyInto(out, share);
  multiplyInto(out, share);
  multiplyInto(out, inputImpedance(solution, sourceId));
  for (let f = 0; f < frequencyCount; f++) {
    out.re[f]! *= factor;
    out.im[f]! *= factor;
  }
  return out;
}

/** Sign of the equations on the side of the gyrators where a branch stands. */
function sideOf({ compiled }: NodeSolution, branch: Branch): number {
  const node = branchNodes(branch).find((name) => name !== RETURN);
  return node === undefined ? 1 : compiled.signs[compiled.rowOf.get(node)!]!;
}

/**
 * Derivatives of the power that one branch takes up, W, with the logarithms of values anywhere in the circuit. The
 * adjoint is excited by the row of the branch's current, I = y (v_a - v_b): P = Re(y) |v|² has
 * dP/dp = 2 Re(y) Re(conj(v) dv/dp) + |v|² Re(dy/dp), the last term for the branch's own values alone.
 * @example powerDerivatives(solution, 'R1', [{ id: 'C1', name: 'farad' }])[0]
 */
export function powerDerivatives(
  solution: NodeSolution,
  branchId: string,
  values: readonly BranchValue[],
): Float64Array[] {
  const { frequencyCount, table } = solution;
  const branch = branchOf(solution, branchId);
  if (branch.kind !== 'admittance') throw new RangeError(`${branchId} is no part that takes up power.`);
  const [a, b] = branch.nodes;
  const admittance = table.rows[solution.compiled.indexOf.get(branchId)!]!;
  const opposite = { re: admittance.re.map((x) => -x), im: admittance.im.map((x) => -x) };
  const adjoint = solveAdjoint(solution, [
    { node: a, weight: admittance },
    { node: b, weight: opposite },
  ]);
  const current = complexes(frequencyCount);
  const voltage = complexes(frequencyCount);
  branchCurrentInto(current, solution, branchId);
  branchVoltageInto(voltage, solution, branchId);
  const derivative = complexes(frequencyCount);
  const own = complexes(frequencyCount);
  return values.map((value) => {
    const size = branchValueOf(solution, value);
    outputDerivativeInto(derivative, adjoint, value.id, value.name);
    const isOwn = value.id === branchId;
    if (isOwn) branchDerivative(branch, value.name)(table.omegas, own.re, own.im);
    return Float64Array.from({ length: frequencyCount }, (_, f) => {
      const y = admittance.re[f]! ** 2 + admittance.im[f]! ** 2;
      const squared = voltage.re[f]! ** 2 + voltage.im[f]! ** 2;
      // conj(I) y dv, over |y|²: Re(conj(v) dv) = Re(conj(I) y dv) / |y|².
      const along = current.re[f]! * derivative.re[f]! + current.im[f]! * derivative.im[f]!;
      return size * ((2 * admittance.re[f]! * along) / y + (isOwn ? squared * own.re[f]! : 0));
    });
  });
}

function multiplyInto(out: Complexes, by: Complexes): void {
  for (let f = 0; f < out.re.length; f++) {
    const a = out.re[f]!;
    const b = out.im[f]!;
    out.re[f] = a * by.re[f]! - b * by.im[f]!;
    out.im[f] = a * by.im[f]! + b * by.re[f]!;
  }
}

/** out = factor × out / by; 0 where `by` is 0. */
function divideInto(out: Complexes, by: Complexes, factor: number): void {
  for (let f = 0; f < out.re.length; f++) {
    const a = by.re[f]!;
    const b = by.im[f]!;
    const squared = a * a + b * b;
    const scale = squared > 0 ? factor / squared : 0;
    const p = out.re[f]!;
    const q = out.im[f]!;
    out.re[f] = (p * a + q * b) * scale;
    out.im[f] = (q * a - p * b) * scale;
  }
}

import { branchCurrentInto } from './branchCurrent.ts';
import { branchVoltageInto } from './branchVoltage.ts';
import type { NodeSolution } from './nodeSolution.ts';

/**
 * Power that a branch takes up, W: the real part of v conj(i), both rms. A source's is what it delivers at its terminals.
 * @example branchPower(solution, 'R1')
 */
export function branchPower(solution: NodeSolution, id: string): Float64Array {
  const power = new Float64Array(solution.frequencyCount);
  branchPowerInto(power, solution, id);
  return power;
}

/** The same into the caller's buffer. */
export function branchPowerInto(out: Float64Array, solution: NodeSolution, id: string): void {
  const { frequencyCount } = solution;
  const index = solution.compiled.indexOf.get(id);
  const branch = index === undefined ? undefined : solution.compiled.branches[index];
  const voltage = { re: out, im: new Float64Array(frequencyCount) };
  branchVoltageInto(voltage, solution, id);
  if (branch?.kind === 'admittance') {
    const row = solution.table.rows[index!]!;
    for (let f = 0; f < frequencyCount; f++) {
      const a = voltage.re[f]!;
      const b = voltage.im[f]!;
      out[f] = row.re[f]! * (a * a + b * b);
    }
    return;
  }
  const current = { re: new Float64Array(frequencyCount), im: new Float64Array(frequencyCount) };
  branchCurrentInto(current, solution, id);
  for (let f = 0; f < frequencyCount; f++) {
    out[f] = voltage.re[f]! * current.re[f]! + voltage.im[f]! * current.im[f]!;
  }
}

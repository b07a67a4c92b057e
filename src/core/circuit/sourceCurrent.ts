import { branchCurrentInto } from './branchCurrent.ts';
import { branchOf, branchVoltageInto } from './branchVoltage.ts';
import type { Complexes, NodeSolution } from './nodeSolution.ts';

/** An impedance above this is given as this: nothing is connected. Keeps infinities out of what is handed on. */
export const OPEN_OHM = 1e9;

const complexes = (count: number): Complexes => ({ re: new Float64Array(count), im: new Float64Array(count) });

/**
 * Current that a source delivers out of its plus terminal, A rms.
 * @example sourceCurrent(solution, 'V1')
 */
export function sourceCurrent(solution: NodeSolution, id: string): Complexes {
  if (branchOf(solution, id).kind !== 'source') throw new RangeError(`${id} is no source.`);
  const out = complexes(solution.frequencyCount);
  branchCurrentInto(out, solution, id);
  return out;
}

/**
 * Impedance that a source sees: voltage at its terminals over the current it delivers, ohm, with all sources as they
 * are; its own resistance is not included. Where no current flows it is 1 GΩ.
 * @example inputImpedance(solution, 'V1')
 */
export function inputImpedance(solution: NodeSolution, id: string): Complexes {
  const current = sourceCurrent(solution, id);
  const out = complexes(solution.frequencyCount);
  branchVoltageInto(out, solution, id);
  for (let f = 0; f < solution.frequencyCount; f++) {
    const a = current.re[f]!;
    const b = current.im[f]!;
    const p = out.re[f]!;
    const q = out.im[f]!;
    const squared = a * a + b * b;
    const open = Math.hypot(p, q) >= OPEN_OHM * Math.sqrt(squared);
    out.re[f] = open ? OPEN_OHM : (p * a + q * b) / squared;
    out.im[f] = open ? 0 : (q * a - p * b) / squared;
  }
  return out;
}

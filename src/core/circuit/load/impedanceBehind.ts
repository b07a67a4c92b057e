import { type Result, succeed } from '../../messages/problem.ts';
import type { Branch } from '../branch.ts';
import { source } from '../branches/source.ts';
import { compileCircuit } from '../compileCircuit.ts';
import type { Complexes } from '../nodeSolution.ts';
import { solveCircuit } from '../solveCircuit.ts';
import { inputImpedance } from '../sourceCurrent.ts';
import { tabulateAdmittances } from '../tabulateAdmittances.ts';
import { steady } from './loadAdmittance.ts';

/** No part has a name with a space. */
const PROBE = 'looking back';

/**
 * Impedance of a circuit seen between two of its nodes, ohm, over the sweep `omegas` (rad/s, ascending), its sources still (0 V
 * behind their own resistance): what a driver sees when it looks back, with the driver's own branches left out of `branches`.
 *
 * Problems as of `compileCircuit` and `solveCircuit`. An open end is 1 GΩ. Source: Thévenin's theorem.
 * @example impedanceBehind(network, ['w1', '0'], omegas)
 */
export function impedanceBehind(
  branches: readonly Branch[],
  nodes: readonly [string, string],
  omegas: Float64Array,
): Result<Complexes> {
  const quiet = branches.map((branch) => (branch.kind === 'source' ? steady(branch, 0) : branch));
  const compiled = compileCircuit([...quiet, source(PROBE, nodes, 1, 1)]);
  if (!compiled.ok) return compiled;
  const solution = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, omegas));
  return solution.ok ? succeed(inputImpedance(solution.value, PROBE)) : solution;
}

/**
 * Share of a driver's electrical damping that is left behind a source resistance: Re/(Re + Rs). Its Qes grows by the inverse;
 * `sourceOhm` is the real part of what it sees at its resonance.
 * @example dampingLeft(5.6, 0.4) // 0.933
 */
export const dampingLeft = (reOhm: number, sourceOhm: number): number => reOhm / (reOhm + sourceOhm);

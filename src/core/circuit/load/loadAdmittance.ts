import { fail, type Problem, type Result, succeed } from '../../messages/problem.ts';
import type { Admittance, Branch, SourceBranch } from '../branch.ts';
import { compileCircuit } from '../compileCircuit.ts';
import { solveCircuit } from '../solveCircuit.ts';
import { inputImpedance } from '../sourceCurrent.ts';
import { tabulateAdmittances } from '../tabulateAdmittances.ts';

/** Carries a solver's problems out of the functions that call an admittance. */
export class UnsolvedLoad extends Error {
  constructor(readonly problems: readonly Problem[]) {
    super(problems.map(({ code }) => code).join(', '));
  }
}

/**
 * Admittance that a source of a circuit sees at its terminals, at any frequencies; all other sources are still (0 V behind their own
 * resistance).
 *
 * Problems as of `compileCircuit`. The admittance throws `UnsolvedLoad` with the problems of `solveCircuit`. Throws a RangeError where
 * there is no such source.
 * @example const load = loadAdmittance(branches, 'A1');
 */
export function loadAdmittance(branches: readonly Branch[], sourceId: string): Result<Admittance> {
  if (!branches.some(({ kind, id }) => kind === 'source' && id === sourceId))
    throw new RangeError(`${sourceId} is no source.`);
  const compiled = compileCircuit(
    branches.map((branch) => (branch.kind === 'source' ? steady(branch, branch.id === sourceId ? 1 : 0) : branch)),
  );
  if (!compiled.ok) return compiled;
  return succeed((omegas, outRe, outIm) => {
    const solution = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, omegas));
    if (!solution.ok) throw new UnsolvedLoad(solution.problems);
    const { re, im } = inputImpedance(solution.value, sourceId);
    for (let f = 0; f < omegas.length; f++) {
      const squared = re[f]! ** 2 + im[f]! ** 2;
      outRe[f] = re[f]! / squared;
      outIm[f] = -im[f]! / squared;
    }
  });
}

/** What a computation on such an admittance returns, or the solver's problems. */
export function withLoad<T>(compute: () => T): Result<T> {
  try {
    return succeed(compute());
  } catch (thrown) {
    if (thrown instanceof UnsolvedLoad) return fail(...thrown.problems);
    throw thrown;
  }
}

/** A source of constant voltage in place of a source. */
export const steady = ({ kind, id, nodes, resistanceOhm }: SourceBranch, voltageV: number): SourceBranch => ({
  kind,
  id,
  nodes,
  voltageV,
  resistanceOhm,
});

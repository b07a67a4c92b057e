import { buildLayout } from './buildLayout.ts';
import { type BuildSolver, buildSolver } from './buildSolver.ts';
import { type BuildFit, fitBuild } from './fitBuild.ts';
import type { Hypothesis } from './hypothesis.ts';
import type { ImpedanceData } from './impedanceData.ts';
import { unknownKey } from './unknown.ts';

/** A hypothesis with the values that explain the data best under it. */
export interface Candidate {
  readonly hypothesis: Hypothesis;
  readonly logPrior: number;
  readonly fit: BuildFit;
}

/** ln of what a candidate is worth against others of the same data: prior times evidence. */
export const logWorth = ({ logPrior, fit }: Candidate): number => logPrior + fit.logEvidence;

export const solverOf = ({ build, unknowns }: Hypothesis): BuildSolver => buildSolver(buildLayout(build, unknowns));

/** Logarithms of a hypothesis's unknowns, those that `known` holds taken over by name, the others 0. */
export const startFrom = ({ unknowns }: Hypothesis, known: ReadonlyMap<string, number>): Float64Array =>
  Float64Array.from(unknowns, (unknown) => known.get(unknownKey(unknown)) ?? 0);

export const logsByKey = ({ hypothesis, fit }: Pick<Candidate, 'hypothesis' | 'fit'>): ReadonlyMap<string, number> =>
  new Map(hypothesis.unknowns.map((unknown, k) => [unknownKey(unknown), fit.logs[k]!]));

/** Steps from each start, and from the best of them. */
export interface SearchEffort {
  readonly perStart: number;
  readonly more: number;
  readonly mostStarts: number;
  /** See `FitSetting`; what is wild gets twice that. */
  readonly hopelessAbove?: number;
}

/**
 * Fits a hypothesis from the values that `known` holds; what is wild begins from each of its own starts, and the best end goes on.
 * @example fitHypothesis(hypothesis, data, new Map(), { perStart: 2, more: 4, mostStarts: 6 })
 */
export function fitHypothesis(
  hypothesis: Hypothesis,
  data: ImpedanceData,
  known: ReadonlyMap<string, number>,
  effort: SearchEffort,
): BuildFit {
  const solver = solverOf(hypothesis);
  const last = hypothesis.wild.at(-1);
  const from = startFrom(hypothesis, known);
  const limit = (factor: number) =>
    effort.hopelessAbove === undefined ? {} : { hopelessAbove: factor * effort.hopelessAbove };
  if (last === undefined) {
    return fitBuild(solver, data, { from, mostSteps: effort.perStart + effort.more, ...limit(1) });
  }
  const at = hypothesis.unknowns.findIndex((unknown) => unknownKey(unknown) === last.key);
  let best: BuildFit | null = null;
  for (const start of last.starts.slice(0, effort.mostStarts)) {
    from[at] = start;
    const fit = fitBuild(solver, data, { from, mostSteps: effort.perStart, ...limit(2) });
    if (best === null || fit.cost < best.cost) best = fit;
  }
  if (best === null || best.converged || effort.more === 0)
    return best ?? fitBuild(solver, data, { from, mostSteps: 0 });
  return fitBuild(solver, data, { from: best.logs, mostSteps: effort.more });
}

import { fail, type Problem, problem, type Result, succeed } from '../../messages/problem.ts';
import { type Control, Effort, Stopped } from './effort.ts';
import { type FitPoint, fitPoint, SQUARES } from './fitPoint.ts';
import { type Criterion, type FitProblem, KEPT_WITHIN, type Scored } from './fitProblem.ts';
import { type Choices, roundedValues } from './preferredChoices.ts';
import { type Found, searchContinuous } from './searchContinuous.ts';
import { type Proof, searchPreferred } from './searchPreferred.ts';

export interface OptimiseOptions {
  /** Continuous searches: one from the own values, the others from random ones. */
  readonly starts: number;
  readonly seed: number;
  readonly criterion: Criterion;
  /** Values that can be bought; null: the continuous design is all that is asked for. */
  readonly choices: Choices | null;
}

/** How a search ended. */
export interface Ending {
  /** `no-better`: nothing found beats the design that was there. `out-of-steps`: the best search was still getting better. */
  readonly kind: 'converged' | 'out-of-steps' | 'no-better' | 'stopped';
  /** Whether the design returned keeps all limits, to 0.1 %. */
  readonly keepsLimits: boolean;
  /** Parts that stand at a bound and would go on beyond it. */
  readonly atBounds: readonly string[];
  /** Limits that the continuous design leans on: `impedance V1`, `power R1`, `cost`. */
  readonly limitsMet: readonly string[];
  /** Designs worked out, and how many of them with all derivatives. */
  readonly evaluations: number;
  readonly gradients: number;
  readonly iterations: number;
}

export interface Optimised {
  /** The design as it was. */
  readonly start: Scored;
  /** The best of any values. */
  readonly continuous: Scored;
  /** Its plain rounding, for comparison, and what was found instead; null where no choices were given. */
  readonly rounded: Scored | null;
  readonly preferred: Scored | null;
  readonly proof: Proof | null;
  readonly ending: Ending;
}

/**
 * Brings a crossover to its targets: continuous values first, by exact derivatives, then values that can be bought.
 *
 * The preferred design is never worse than plain rounding of the continuous one; `proof` says in what sense it is the best.
 * Stopping keeps the best so far. Nothing proves the continuous design to be the best of all: starts from elsewhere guard
 * against local ones. Problems: `optimise.bounds`, `optimise.no-weight`, and those of `solveCircuit` for the design as it was.
 * @example optimise(problem, { starts: 12, seed: 1, criterion: 'rms', choices }, { shouldStop })
 */
export function optimise(input: FitProblem, options: OptimiseOptions, control: Control = {}): Result<Optimised> {
  const problems = problemsOf(input);
  if (problems.length > 0) return fail(...problems);
  const begin = fitPoint(input, input.trial.start, { multipliers: null, norm: SQUARES, withJacobian: false });
  if (!begin.ok) return begin;
  const effort = new Effort(input, options.criterion, control);
  const { scored: start } = begin.value;
  if (isWithin(input, start.values)) effort.keep('continuous', start);
  let found: readonly Found[] = [];
  let rounded: Scored | null = null;
  let proof: Proof | null = null;
  let wasStopped = false;
  try {
    found = searchContinuous(input, effort, options);
    if (found.length > 0) effort.best.continuous = bestOf(effort, found, start, input);
    if (options.choices !== null) {
      rounded = roundedOf(input, effort, options.choices);
      if (rounded !== null) proof = searchPreferred(input, options.choices, effort, found, rounded);
    }
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    wasStopped = true;
  }
  const continuous = effort.best.continuous ?? start;
  if (options.choices !== null && rounded === null) rounded = roundedOf(input, effort, options.choices, continuous);
  if (rounded !== null) effort.keep('preferred', rounded);
  const preferred = options.choices === null ? null : effort.best.preferred;
  const best = found[0];
  return succeed({
    start,
    continuous,
    rounded,
    preferred,
    proof: wasStopped ? null : proof,
    ending: {
      kind: endingKind(wasStopped, best, effort.merit(continuous) < effort.merit(start) - 1e-6),
      keepsLimits: (preferred ?? continuous).excess <= KEPT_WITHIN,
      atBounds:
        best === undefined ? [] : input.trial.variables.flatMap(({ partId }, i) => (best.isAtBound[i] ? [partId] : [])),
      limitsMet: best === undefined ? [] : limitsMet(best.point),
      evaluations: effort.evaluations,
      gradients: effort.gradients,
      iterations: found.reduce((sum, { iterations }) => sum + iterations, 0),
    },
  });
}

function endingKind(wasStopped: boolean, best: Found | undefined, isBetter: boolean): Ending['kind'] {
  if (wasStopped) return 'stopped';
  if (!isBetter) return 'no-better';
  return best?.converged === true ? 'converged' : 'out-of-steps';
}

function problemsOf({ trial, bounds, targets }: FitProblem): Problem[] {
  if (bounds.length !== trial.variables.length) throw new RangeError('Every variable has its bounds.');
  const crossed = trial.variables.flatMap(({ partId }, i) => {
    const { least, greatest } = bounds[i]!;
    if (least > 0 && greatest >= least && Number.isFinite(greatest)) return [];
    return [problem('optimise.bounds', { kind: 'part', id: partId }, { part: partId, least, greatest })];
  });
  const hasWeight = targets.some(({ weights }) => weights.some((weight) => weight > 0));
  return hasWeight ? crossed : [...crossed, problem('optimise.no-weight', { kind: 'document' })];
}

const isWithin = ({ bounds }: FitProblem, values: Float64Array): boolean =>
  values.every((value, i) => value >= bounds[i]!.least && value <= bounds[i]!.greatest);

/** The best end of a search, or the design as it was where that is better and allowed. */
function bestOf(effort: Effort, found: readonly Found[], start: Scored, input: FitProblem): Scored {
  const best = found[0]!.point.scored;
  return isWithin(input, start.values) && effort.merit(start) < effort.merit(best) ? start : best;
}

/** Worked out apart from the search, which may have been stopped. */
function roundedOf(
  input: FitProblem,
  effort: Effort,
  choices: Choices,
  continuous: Scored | null = effort.best.continuous,
): Scored | null {
  if (continuous === null) return null;
  const values = roundedValues(continuous.values, choices);
  const point = fitPoint(input, values, { multipliers: null, norm: SQUARES, withJacobian: false });
  return point.ok ? point.value.scored : null;
}

/** Limits that are reached to within 0.1 % at some frequency. */
const limitsMet = ({ limits }: FitPoint): string[] =>
  limits.flatMap(({ name, values }) => (values.some((c) => c > -KEPT_WITHIN) ? [name] : []));

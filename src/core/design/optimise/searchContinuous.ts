import { randomStream } from '../../math/randomStream.ts';
import { dampedSteps } from './dampedSteps.ts';
import type { Effort } from './effort.ts';
import { type ErrorNorm, type FitPoint, type Multipliers, SQUARES } from './fitPoint.ts';
import { type Criterion, type FitProblem, KEPT_WITHIN } from './fitProblem.ts';

export interface Found {
  readonly point: FitPoint;
  readonly multipliers: Multipliers | null;
  readonly isAtBound: Uint8Array;
  readonly converged: boolean;
  readonly iterations: number;
}

export interface ContinuousOptions {
  readonly starts: number;
  readonly seed: number;
  readonly criterion: Criterion;
}

/** Random starts lie within this factor of the own values. */
const START_FACTOR = 3;
const FIRST_ITERATIONS = 40;
const POLISH_ITERATIONS = 200;
const POLISHED = 3;
const LIMIT_ROUNDS = 10;
const FIRST_PENALTY = 100;
const PERFECT_DB = 1e-6;

/**
 * The best designs of any values, best first: from the own values and from random ones, then the best few brought to their
 * limits and, for the greatest error, on to higher powers of it.
 * Source of the powers: least p-th approximation, J. W. Bandler and C. Charalambous 1972 (from memory).
 */
export function searchContinuous(problem: FitProblem, effort: Effort, options: ContinuousOptions): Found[] {
  const begun: Found[] = [];
  const random = randomStream(options.seed);
  for (let start = 0; start < options.starts; start++) {
    const found = descend(
      problem,
      effort,
      startValues(problem, random.uniform, start === 0),
      noMultipliers(problem),
      SQUARES,
      FIRST_ITERATIONS,
    );
    if (found !== null) begun.push(found);
    effort.tell('continuous', (0.7 * (start + 1)) / options.starts);
    if (found !== null && found.point.sum < PERFECT_DB ** 2) break;
  }
  begun.sort((a, b) => a.point.sum - b.point.sum);
  const distinct = begun.filter((found, i) => begun.slice(0, i).every((other) => !isSame(found, other)));
  const polished = distinct.slice(0, POLISHED).map((found) => polish(problem, effort, found, options.criterion));
  effort.tell('continuous', 1);
  return polished.sort((a, b) => effort.merit(a.point.scored) - effort.merit(b.point.scored));
}

function startValues({ trial, bounds }: FitProblem, uniform: () => number, isOwn: boolean): Float64Array {
  return trial.start.map((value, i) => {
    const { least, greatest } = bounds[i]!;
    const factor = isOwn ? 1 : START_FACTOR ** (2 * uniform() - 1);
    return Math.min(greatest, Math.max(least, value * factor));
  });
}

function noMultipliers(problem: FitProblem): Multipliers | null {
  const { leastImpedances, greatestPowers, cost } = problem.limits;
  const swept = leastImpedances.length + greatestPowers.length;
  if (swept === 0 && cost === null) return null;
  const { length } = problem.trial.frequenciesHz;
  const rows = Array.from({ length: swept }, () => new Float64Array(length));
  return { penalty: FIRST_PENALTY, rows: cost === null ? rows : [...rows, new Float64Array(1)] };
}

function descend(
  problem: FitProblem,
  effort: Effort,
  start: Float64Array,
  multipliers: Multipliers | null,
  norm: ErrorNorm,
  mostIterations: number,
): Found | null {
  const stepped = dampedSteps(effort, start, {
    bounds: problem.bounds,
    isFixed: new Uint8Array(start.length),
    multipliers,
    norm,
    mostIterations,
  });
  return stepped && { ...stepped, multipliers };
}

/** Designs within a per cent in every value are one. */
const isSame = (a: Found, b: Found): boolean =>
  a.point.scored.values.every((value, i) => Math.abs(Math.log(value / b.point.scored.values[i]!)) < 0.01);

function polish(problem: FitProblem, effort: Effort, begun: Found, criterion: Criterion): Found {
  let best = toLimits(problem, effort, begun, SQUARES);
  if (criterion === 'rms') return best;
  for (let power = 4; power <= 32; power *= 2) {
    const norm = { power, scaleDb: Math.max(1e-9, best.point.scored.greatestDb) };
    const next = toLimits(problem, effort, best, norm);
    if (effort.merit(next.point.scored) < effort.merit(best.point.scored)) best = next;
  }
  return best;
}

/** Rounds of the augmented Lagrangian, until the limits are kept and the multipliers have settled. */
function toLimits(problem: FitProblem, effort: Effort, begun: Found, norm: ErrorNorm): Found {
  let found = begun;
  let { multipliers } = begun;
  let iterations = begun.iterations;
  for (let round = 0; round < LIMIT_ROUNDS; round++) {
    const { excess } = found.point.scored;
    if (multipliers !== null && (round > 0 || norm.power === 2)) multipliers = raised(multipliers, found.point);
    const next = descend(problem, effort, found.point.scored.values, multipliers, norm, POLISH_ITERATIONS);
    if (next === null) break;
    iterations += next.iterations;
    const now = next.point.scored.excess;
    found = { ...next, iterations };
    if (multipliers === null || (now <= KEPT_WITHIN / 2 && next.converged)) break;
    if (now > excess / 4) multipliers = { ...multipliers, penalty: 5 * multipliers.penalty };
  }
  return found;
}

/** λ becomes max(0, λ + μ c). */
const raised = ({ penalty, rows }: Multipliers, point: FitPoint): Multipliers => ({
  penalty,
  rows: rows.map((row, k) => row.map((lambda, f) => Math.max(0, lambda + penalty * point.limits[k]!.values[f]!))),
});

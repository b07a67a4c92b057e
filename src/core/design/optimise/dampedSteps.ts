import type { Effort } from './effort.ts';
import type { ErrorNorm, FitPoint, Multipliers } from './fitPoint.ts';
import type { ValueBounds } from './fitProblem.ts';
import { lowerTriangle, type Matrix, normalEquations, partOf, solveTriangles } from './normalEquations.ts';

export interface StepOptions {
  readonly bounds: readonly ValueBounds[];
  /** 1: the variable stays where it is. */
  readonly isFixed: Uint8Array;
  readonly multipliers: Multipliers | null;
  readonly norm: ErrorNorm;
  readonly mostIterations: number;
}

export interface Stepped {
  readonly point: FitPoint;
  readonly converged: boolean;
  readonly iterations: number;
  /** 1: at its bound, and the error would fall beyond it. */
  readonly isAtBound: Uint8Array;
}

/** Relative to the sum of squares; two such steps in a row end the search. */
const LEAST_GAIN = 1e-6;
const LARGEST_STEP = 1;
const LEAST_RESIDUAL = 1e-14;

/**
 * Least squares by damped Gauss-Newton steps in the logarithms of the values, within bounds: a variable at its bound that would
 * leave it is taken out of the step. Null where the circuit cannot be solved at the start.
 * Source: K. Levenberg 1944, D. W. Marquardt 1963 with his scaling, as in Nocedal and Wright, section 10.3 (from memory).
 * @example dampedSteps(effort, trial.start, { bounds, isFixed, multipliers: null, norm: SQUARES, mostIterations: 60 })
 */
export function dampedSteps(effort: Effort, start: Float64Array, options: StepOptions): Stepped | null {
  const { bounds, isFixed, multipliers, norm, mostIterations } = options;
  const evaluation = { multipliers, norm, withJacobian: true };
  const begin = effort.at(start, evaluation);
  if (begin === null) return null;
  let point: FitPoint = begin;
  let damping = 1e-3;
  let small = 0;
  for (let iterations = 0; ; iterations++) {
    const { matrix, right } = normalEquations(point.jacobian!, point.residuals);
    const isAtBound = atBounds(point.scored.values, right, bounds);
    const free: number[] = [];
    for (let i = 0; i < start.length; i++) if (isFixed[i] === 0 && isAtBound[i] === 0) free.push(i);
    const converged = free.length === 0 || point.sum < LEAST_RESIDUAL || small === 2;
    if (converged || iterations === mostIterations) return { point, converged, iterations, isAtBound };
    const before = point.sum;
    for (; point.sum === before && damping < 1e8; damping *= 6) {
      const next = stepFrom(point.scored.values, free, matrix, right, damping, bounds);
      const there = next && effort.at(next, evaluation);
      if (!there || there.sum >= before) continue;
      point = there;
      damping = Math.max(1e-9, damping / 30);
    }
    if (point.sum === before) return { point, converged: true, iterations, isAtBound };
    small = 1 - point.sum / before < LEAST_GAIN ? small + 1 : 0;
  }
}

/** Where the error would fall beyond a bound. */
const atBounds = (values: Float64Array, slopes: Float64Array, bounds: readonly ValueBounds[]): Uint8Array =>
  Uint8Array.from(bounds, ({ least, greatest }, i) =>
    (slopes[i]! > 0 && values[i]! <= least) || (slopes[i]! < 0 && values[i]! >= greatest) ? 1 : 0,
  );

function stepFrom(
  values: Float64Array,
  free: readonly number[],
  matrix: Matrix,
  right: Float64Array,
  damping: number,
  bounds: readonly ValueBounds[],
): Float64Array | null {
  const damped = partOf(matrix, free);
  damped.forEach((row, k) => {
    row[k]! += damping * row[k]! + 1e-12;
  });
  const lower = lowerTriangle(damped);
  return (
    lower &&
    moved(
      values,
      free,
      solveTriangles(
        lower,
        Float64Array.from(free, (i) => -right[i]!),
      ),
      bounds,
    )
  );
}

/** Values moved by a step in their logarithms, kept within the bounds and to an e-fold change at most. */
function moved(
  values: Float64Array,
  free: readonly number[],
  step: Float64Array,
  bounds: readonly ValueBounds[],
): Float64Array {
  const longest = step.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  const factor = longest > LARGEST_STEP ? LARGEST_STEP / longest : 1;
  const next = values.slice();
  free.forEach((i, k) => {
    const { least, greatest } = bounds[i]!;
    next[i] = Math.min(greatest, Math.max(least, values[i]! * Math.exp(factor * step[k]!)));
  });
  return next;
}

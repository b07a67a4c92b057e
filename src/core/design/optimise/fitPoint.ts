import type { Result } from '../../messages/problem.ts';
import { succeed } from '../../messages/problem.ts';
import type { Target } from '../targets/index.ts';
import { type Tried, trialLevelGradient, trialLevelsDb, tryValues } from '../trial/index.ts';
import type { FitProblem, Scored } from './fitProblem.ts';
import { costOf, type LimitRow, limitRows } from './limitRows.ts';

// Least squares: Σ of weighted squared errors, weights adding up to 1, and for each limit c ≤ 0 the augmented Lagrangian's
// term (μ/2) max(0, c + λ/μ)², which is the square of one more residual. With the right λ, which the outer rounds find, the
// least of the whole lies at the constrained least for any large enough μ.
// Source: J. Nocedal, S. J. Wright, Numerical Optimization, 2006, section 17.4 (from memory).

/** Multipliers λ of every value of every limit, and the penalty μ. */
export interface Multipliers {
  readonly penalty: number;
  readonly rows: readonly Float64Array[];
}

/** How errors are weighed against one another: |e| to the power p, with `scaleDb` the greatest of them when p was set. */
export interface ErrorNorm {
  readonly power: number;
  readonly scaleDb: number;
}
export const SQUARES: ErrorNorm = { power: 2, scaleDb: 1 };

/** One set of values with its residuals; `jacobian` per variable, null where it was not asked for. */
export interface FitPoint {
  readonly tried: Tried;
  readonly scored: Scored;
  readonly residuals: Float64Array;
  readonly jacobian: readonly Float64Array[] | null;
  readonly limits: readonly LimitRow[];
  /** Sum of the squared residuals. */
  readonly sum: number;
}

export interface FitOptions {
  readonly multipliers: Multipliers | null;
  readonly norm: ErrorNorm;
  readonly withJacobian: boolean;
}

/**
 * Errors, limits and their derivatives at one set of values. `earlier` lends its buffers.
 * @example fitPoint(problem, values, { multipliers: null, norm: SQUARES, withJacobian: false })
 */
export function fitPoint(
  problem: FitProblem,
  values: Float64Array,
  { multipliers, norm, withJacobian }: FitOptions,
  earlier?: Tried,
): Result<FitPoint> {
  const result = tryValues(problem.trial, values, earlier);
  if (!result.ok) return result;
  const tried = result.value;
  const rows: Float64Array[] = [];
  const slopes: (readonly Float64Array[])[] = [];
  const whole = problem.targets.reduce((sum, { weights }) => sum + weights.reduce((a, b) => a + b, 0), 0);
  let squares = 0;
  let greatestDb = 0;
  for (const target of problem.targets) {
    const { levelsDb, derivatives } = withJacobian
      ? trialLevelGradient(tried, target.curve)
      : { levelsDb: trialLevelsDb(tried, target.curve), derivatives: [] };
    const errors = centred(
      levelsDb.map((level, f) => level - target.levelsDb[f]!),
      target,
    );
    for (let f = 0; f < errors.length; f++) {
      const weight = target.weights[f]!;
      squares += (weight / whole) * errors[f]! ** 2;
      if (weight > 0) greatestDb = Math.max(greatestDb, Math.abs(errors[f]!));
    }
    rows.push(errors.map((error, f) => Math.sqrt(target.weights[f]! / whole) * bent(error, norm)));
    slopes.push(
      derivatives.map((derivative) =>
        centred(derivative, target).map(
          (slope, f) => Math.sqrt(target.weights[f]! / whole) * slope * bentSlope(errors[f]!, norm),
        ),
      ),
    );
  }
  const limits = limitRows(problem, tried);
  let excess = 0;
  limits.forEach((limit, k) => {
    for (const c of limit.values) excess = Math.max(excess, c);
    if (multipliers === null) return;
    const lambda = multipliers.rows[k]!;
    const root = Math.sqrt(multipliers.penalty / 2);
    const active = limit.values.map((c, f) => Math.max(0, c + lambda[f]! / multipliers.penalty));
    if (active.every((c) => c === 0)) return;
    rows.push(active.map((c) => root * c));
    if (withJacobian) {
      slopes.push(limit.derivatives().map((slope) => slope.map((x, f) => (active[f]! > 0 ? root * x : 0))));
    }
  });
  const residuals = joined(rows);
  const { cost } = problem.limits;
  return succeed({
    tried,
    scored: {
      values: tried.values,
      rmsDb: Math.sqrt(squares),
      greatestDb,
      excess,
      cost: cost === null ? null : costOf(cost.prices, tried.values),
    },
    residuals,
    jacobian: withJacobian
      ? problem.trial.variables.map((_, i) => joined(slopes.map((rowSlopes) => rowSlopes[i]!)))
      : null,
    limits,
    sum: residuals.reduce((sum, r) => sum + r * r, 0),
  });
}

/** Less the weighted mean, where the level is free. */
function centred(errors: Float64Array, { levelIsFree, weights }: Target): Float64Array {
  if (!levelIsFree) return errors;
  let sum = 0;
  let whole = 0;
  for (let f = 0; f < errors.length; f++) {
    sum += weights[f]! * errors[f]!;
    whole += weights[f]!;
  }
  const mean = whole > 0 ? sum / whole : 0;
  return errors.map((error) => error - mean);
}

/** The error bent so that its square is the p-th power, with the same value where it is `scaleDb`. */
const bent = (error: number, { power, scaleDb }: ErrorNorm): number =>
  power === 2 ? error : Math.sign(error) * scaleDb * (Math.abs(error) / scaleDb) ** (power / 2);

const bentSlope = (error: number, { power, scaleDb }: ErrorNorm): number =>
  power === 2 ? 1 : (power / 2) * (Math.abs(error) / scaleDb) ** (power / 2 - 1);

function joined(rows: readonly Float64Array[]): Float64Array {
  const out = new Float64Array(rows.reduce((sum, row) => sum + row.length, 0));
  let at = 0;
  for (const row of rows) {
    out.set(row, at);
    at += row.length;
  }
  return out;
}

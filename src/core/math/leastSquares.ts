import { choleskyFactor, choleskyInverse, choleskySolve } from './cholesky.ts';
import { type FitParameter, type LeastSquaresTask, type Normal, normalEquations, slopes } from './normalEquations.ts';

export type { FitParameter, LeastSquaresTask } from './normalEquations.ts';

export interface LeastSquaresFit {
  readonly values: Float64Array;
  readonly residuals: Float64Array;
  readonly sumOfSquares: number;
  /** Residuals less the parameters that are not held by a bound. */
  readonly freedom: number;
  /** sumOfSquares/freedom. */
  readonly variance: number;
  /** Of the walked coordinates (ln p or p), n by n, variance included; zeros for held ones; null where the data do not fix them all. */
  readonly covariance: Float64Array | null;
  /** The parameters that rest on a bound. */
  readonly held: readonly boolean[];
  readonly converged: boolean;
  readonly ended: 'short-step' | 'small-fall' | 'no-better' | 'too-many-steps';
  readonly iterations: number;
}

const SHORT = 1e-8;
const SMALL_FALL = 1e-14;
const DEPENDENT = 1e-13;

/**
 * Values that make the sum of squared residuals least, by Levenberg's and Marquardt's damped Gauss-Newton steps with bounds.
 *
 * (JᵀJ + λ diag JᵀJ) d = −Jᵀr; λ/3 after a step that lowers the sum, 4λ after one that does not. A parameter on a bound whose
 * gradient points outwards is held there and counts as fixed. J by central differences (1e-6; error near 1e-10 relative).
 * Ends well when the greatest step is below 1e-8 (relative for 'log') or the sum stops falling; `ended` 'no-better' counts as
 * converged only where the undamped step is below 1e-6. One local minimum: start from several places where there may be more.
 * Throws a RangeError for starts outside their bounds or fewer residuals than parameters.
 * Source: D. W. Marquardt, J. SIAM 11 (1963) 431; H. P. Gavin, The Levenberg-Marquardt method for nonlinear least squares
 * curve-fitting problems (lecture note).
 *
 * Example: residuals p − 2 and p − 4 with start 1 end at p = 3.
 */
export function leastSquares(task: LeastSquaresTask, mostIterations = 200): LeastSquaresFit {
  const { parameters, count } = task;
  const n = parameters.length;
  check(task);
  const values = Float64Array.from(parameters, ({ start }) => start);
  const residuals = new Float64Array(count);
  const trial = new Float64Array(n);
  const trialResiduals = new Float64Array(count);
  const sumAt = (out: Float64Array, at: Float64Array): number => {
    task.residualsInto(out, at);
    let sum = 0;
    for (let i = 0; i < count; i++) sum += out[i]! * out[i]!;
    return Number.isFinite(sum) ? sum : Number.POSITIVE_INFINITY;
  };
  let sum = sumAt(residuals, values);
  if (sum === Number.POSITIVE_INFINITY) throw new RangeError('the residuals are not finite at the start');
  let damping = 1e-3;
  let ended: LeastSquaresFit['ended'] = 'too-many-steps';
  let iterations = 0;
  let slope = slopes(task, values);
  let normal = normalEquations(slope, residuals, n);
  search: for (; iterations < mostIterations; iterations++) {
    const held = heldBy(parameters, values, normal.gradient);
    for (;;) {
      const step = dampedStep(normal, held, damping, n);
      if (step === null) {
        damping *= 4;
        if (damping < 1e16) continue;
        ended = 'no-better';
        break search;
      }
      const length = walk(parameters, values, step, trial);
      const trialSum = sumAt(trialResiduals, trial);
      if (trialSum <= sum) {
        const fall = sum - trialSum;
        values.set(trial);
        residuals.set(trialResiduals);
        const short = length < SHORT;
        const small = fall <= SMALL_FALL * sum && damping < 1;
        sum = trialSum;
        damping = Math.max(damping / 3, 1e-12);
        slope = slopes(task, values);
        normal = normalEquations(slope, residuals, n);
        if (!short && !small) continue search;
        ended = short ? 'short-step' : 'small-fall';
        iterations++;
        break search;
      }
      damping *= 4;
      if (damping > 1e16 || length === 0) {
        ended = 'no-better';
        break search;
      }
    }
  }
  return summary(task, values, residuals, sum, normal, ended, iterations);
}

function check({ parameters, count }: LeastSquaresTask): void {
  if (count < parameters.length) throw new RangeError('a fit needs as many residuals as parameters');
  for (const { start, least, greatest, scale } of parameters)
    if (!(least <= start && start <= greatest) || (scale === 'log' && !(least > 0)))
      throw new RangeError(`a start of ${start} does not lie in its bounds ${least} to ${greatest}`);
}

const heldBy = (parameters: readonly FitParameter[], values: Float64Array, gradient: Float64Array): boolean[] =>
  parameters.map(
    ({ least, greatest }, j) =>
      least === greatest || (values[j]! <= least && gradient[j]! >= 0) || (values[j]! >= greatest && gradient[j]! <= 0),
  );

/** Solves for the step in columns scaled to 1, the held ones left out. */
function dampedStep({ matrix, gradient }: Normal, held: readonly boolean[], damping: number, n: number) {
  const free = held.flatMap((is, j) => (is || !(matrix[j * n + j]! > 0) ? [] : [j]));
  const size = free.map((j) => Math.sqrt(matrix[j * n + j]!));
  const m = free.length;
  const scaled = new Float64Array(m * m);
  for (let a = 0; a < m; a++)
    for (let b = 0; b < m; b++)
      scaled[a * m + b] = matrix[free[a]! * n + free[b]!]! / (size[a]! * size[b]!) + (a === b ? damping : 0);
  const lower = choleskyFactor(scaled, m, 1e-15);
  if (lower === null) return null;
  const solved = choleskySolve(
    lower,
    m,
    free.map((j, a) => -gradient[j]! / size[a]!),
  );
  const step = new Float64Array(n);
  free.forEach((j, a) => {
    step[j] = solved[a]! / size[a]!;
  });
  return step;
}

/** Takes a step within the bounds; returns the greatest coordinate's length, relative for linear ones too. */
function walk(parameters: readonly FitParameter[], from: Float64Array, step: Float64Array, to: Float64Array): number {
  let longest = 0;
  parameters.forEach(({ scale, least, greatest, start, size = 0 }, j) => {
    const value = from[j]!;
    const wanted = scale === 'log' ? value * Math.exp(Math.min(5, Math.max(-5, step[j]!))) : value + step[j]!;
    to[j] = Math.min(greatest, Math.max(least, wanted));
    const length =
      scale === 'log'
        ? Math.abs(Math.log(to[j]! / value))
        : Math.abs(to[j]! - value) / Math.max(Math.abs(value), Math.abs(start), size, 1e-12);
    longest = Math.max(longest, length);
  });
  return longest;
}

function summary(
  { parameters, count, variance: kind = 'estimated' }: LeastSquaresTask,
  values: Float64Array,
  residuals: Float64Array,
  sumOfSquares: number,
  normal: Normal,
  ended: LeastSquaresFit['ended'],
  iterations: number,
): LeastSquaresFit {
  const n = parameters.length;
  const held = heldBy(parameters, values, normal.gradient);
  const free = held.flatMap((is, j) => (is ? [] : [j]));
  const m = free.length;
  const freedom = Math.max(1, count - m);
  const variance = sumOfSquares / freedom;
  const taken = kind === 'estimated' ? variance : kind === 'known' ? 1 : Math.max(1, variance);
  const size = free.map((j) => Math.sqrt(normal.matrix[j * n + j]!));
  const scaled = new Float64Array(m * m);
  for (let a = 0; a < m; a++)
    for (let b = 0; b < m; b++)
      scaled[a * m + b] = normal.matrix[free[a]! * n + free[b]!]! / (size[a]! * size[b]! || 1);
  const lower = choleskyFactor(scaled, m, DEPENDENT);
  let covariance: Float64Array | null = null;
  let remaining = Number.POSITIVE_INFINITY;
  if (lower !== null) {
    const inverse = choleskyInverse(lower, m);
    covariance = new Float64Array(n * n);
    for (let a = 0; a < m; a++)
      for (let b = 0; b < m; b++)
        covariance[free[a]! * n + free[b]!] = (taken * inverse[a * m + b]!) / (size[a]! * size[b]!);
    const step = choleskySolve(
      lower,
      m,
      free.map((j, a) => -normal.gradient[j]! / size[a]!),
    );
    const to = new Float64Array(n);
    const full = new Float64Array(n);
    free.forEach((j, a) => {
      full[j] = step[a]! / size[a]!;
    });
    remaining = walk(parameters, values, full, to);
  }
  const converged = ended === 'no-better' ? remaining < 1e-6 : ended !== 'too-many-steps' && remaining < 1e-3;
  return { values, residuals, sumOfSquares, freedom, variance, covariance, held, converged, ended, iterations };
}

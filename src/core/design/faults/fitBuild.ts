import { choleskyFactor, choleskySolve } from '../../math/cholesky.ts';
import type { BuildSolution, BuildSolver } from './buildSolver.ts';
import { type ImpedanceData, missInto } from './impedanceData.ts';

// With unknowns x whose logarithms spread by s before anything is measured, and noise σ, the most probable x has the least
//   cost = Σ |ln(Z taken / Z(x))|² / σ² + Σ (x/s)².
// To first order this equals the misfit weighted by the inverse of noise plus tolerance covariance, r'(σ² + J s² J')⁻¹ r, so that what
// tolerances explain is no fault; solving for x instead of inverting keeps that true beyond first order. Laplace's approximation of the
// probability of the data is exp(-cost/2) / sqrt(det(s H s)), H = J'J/σ² + 1/s²: an unknown that may stray far and is then pinned down
// costs ln(s/sd), which is what keeps a fitted value from winning by its freedom alone.
// Source: D. J. C. MacKay, "Bayesian interpolation", Neural Computation 4, 1992, sections 2 and 3 (from memory).

export interface BuildFit {
  readonly logs: Float64Array;
  readonly cost: number;
  /** The part of the cost that the data make. */
  readonly misfit: number;
  /** ln of the probability of the data, up to what all builds share. */
  readonly logEvidence: number;
  /** Standard deviation of each logarithm afterwards. */
  readonly sdLogs: Float64Array;
  readonly converged: boolean;
}

export interface FitSetting {
  readonly from: Float64Array;
  readonly mostSteps: number;
  /** Unknowns that stay where they are. */
  readonly fixed?: ReadonlySet<number>;
  /** A cost that the first step must promise to get below, by its own reckoning, or the fit ends there. */
  readonly hopelessAbove?: number;
}

/** Fall of the cost below which another step is not worth it. */
const ENOUGH = 0.02;
const LONGEST_STEP = 1.2;
const MOST_LOG = 9;

/**
 * The most probable values of a build's unknowns for a taken impedance, by damped Gauss-Newton steps from a start.
 *
 * @example fitBuild(solver, data, { from: new Float64Array(n), mostSteps: 8 }).cost
 */
export function fitBuild(
  solver: BuildSolver,
  data: ImpedanceData,
  { from, mostSteps, fixed, hopelessAbove }: FitSetting,
): BuildFit {
  const { unknowns } = solver.layout;
  const count = unknowns.length;
  const weight = 1 / data.noise ** 2;
  let logs = Float64Array.from(from);
  let now = normalEquations(solver, data, logs, weight);
  let damping = 0;
  let converged = false;
  for (let step = 0; step < mostSteps && !converged; step++) {
    const move = stepOf(now, damping, fixed, count);
    if (move === null) {
      damping = Math.max(0.01, 10 * damping);
      continue;
    }
    if (step === 0 && hopelessAbove !== undefined && promised(now, move) > hopelessAbove) break;
    const trial = logs.map((value, k) => {
      const by = move[k]! * unknowns[k]!.sdLog;
      return Math.min(MOST_LOG, Math.max(-MOST_LOG, value + Math.min(LONGEST_STEP, Math.max(-LONGEST_STEP, by))));
    });
    const next = normalEquations(solver, data, trial, weight);
    if (next.cost <= now.cost) {
      converged = now.cost - next.cost < ENOUGH;
      logs = trial;
      now = next;
      damping = damping < 1e-3 ? 0 : damping / 5;
    } else if (next.cost - now.cost < ENOUGH) converged = true;
    else damping = Math.max(0.03, 6 * damping);
  }
  const factor = choleskyFactor(now.matrix, count, 1e-15);
  let logDeterminant = 0;
  const sdLogs = new Float64Array(count);
  for (let k = 0; k < count; k++) {
    // The matrix is scaled by the spreads, so a value that the data leave alone has 1 here.
    logDeterminant += factor === null ? 0 : 2 * Math.log(factor[k * count + k]!);
    sdLogs[k] = unknowns[k]!.sdLog;
  }
  if (factor !== null) {
    const unit = new Float64Array(count);
    for (let k = 0; k < count; k++) {
      if (unknowns[k]!.sdLog < 0.3) continue;
      unit.fill(0);
      unit[k] = 1;
      sdLogs[k] = unknowns[k]!.sdLog * Math.sqrt(choleskySolve(factor, count, unit)[k]!);
    }
  }
  return {
    logs,
    cost: now.cost,
    misfit: now.misfit,
    logEvidence: -now.cost / 2 - logDeterminant / 2,
    sdLogs,
    converged,
  };
}

/** Cost after a full step if all were linear. */
const promised = ({ cost, gradient }: Equations, move: Float64Array): number =>
  cost - move.reduce((sum, by, k) => sum + by * gradient[k]!, 0);

interface Equations {
  readonly cost: number;
  readonly misfit: number;
  /** s H s and s g, each unknown measured in its own spread. */
  readonly matrix: Float64Array;
  readonly gradient: Float64Array;
}

function normalEquations(solver: BuildSolver, data: ImpedanceData, logs: Float64Array, weight: number): Equations {
  const { unknowns } = solver.layout;
  const count = unknowns.length;
  const points = data.omegas.length;
  const solution = solver.solve(logs);
  const length = data.phasesRad === null ? points : 2 * points;
  const { scaled, misses, misfit, moves } = scaledRows(solution, solver, data, length);
  const matrix = new Float64Array(count * count);
  const gradient = new Float64Array(count);
  let prior = 0;
  for (let k = 0; k < count; k++) {
    const x = logs[k]! / unknowns[k]!.sdLog;
    prior += x * x;
    matrix[k * count + k] = 1;
    gradient[k] = -x;
    if (moves[k] === 0) continue;
    for (let l = 0; l <= k; l++) {
      if (moves[l] === 0) continue;
      const sum = weight * product(scaled, k * length, scaled, l * length, length);
      matrix[k * count + l]! += sum;
      if (l < k) matrix[l * count + k]! += sum;
    }
    gradient[k]! += weight * product(scaled, k * length, misses, 0, length);
  }
  return { cost: weight * misfit + prior, misfit: weight * misfit, matrix, gradient };
}

/** Inner product of two stretches; four sums, so that no addition waits for the one before it. */
function product(a: Float64Array, fromA: number, b: Float64Array, fromB: number, length: number): number {
  let [s, t, u, v] = [0, 0, 0, 0];
  const whole = length & ~3;
  for (let f = 0; f < whole; f += 4) {
    s += a[fromA + f]! * b[fromB + f]!;
    t += a[fromA + f + 1]! * b[fromB + f + 1]!;
    u += a[fromA + f + 2]! * b[fromB + f + 2]!;
    v += a[fromA + f + 3]! * b[fromB + f + 3]!;
  }
  for (let f = whole; f < length; f++) s += a[fromA + f]! * b[fromB + f]!;
  return s + t + u + v;
}

/** Slopes in the unknowns' own spreads, rows one after another, of which those that are 0 throughout have `moves` 0. */
function scaledRows(solution: BuildSolution, { layout, scratch }: BuildSolver, data: ImpedanceData, length: number) {
  const points = data.omegas.length;
  const { unknowns } = layout;
  const misses = new Float64Array(length);
  const scaled = scratch;
  const moves = new Uint8Array(unknowns.length);
  const readable = new Uint8Array(points);
  const miss = new Float64Array(2);
  let misfit = 0;
  for (let f = 0; f < points; f++) {
    readable[f] = missInto(miss, data, solution.z, f) ? 1 : 0;
    misses[f] = miss[0]!;
    misfit += miss[0]! ** 2;
    if (length === points) continue;
    misses[points + f] = miss[1]!;
    misfit += miss[1]! ** 2;
  }
  for (let k = 0; k < unknowns.length; k++) {
    const { re, im } = solution.slopes[k]!;
    const { sdLog } = unknowns[k]!;
    const at = k * length;
    let any = false;
    for (let f = 0; f < points; f++) {
      const by = readable[f]! * sdLog;
      scaled[at + f] = by * re[f]!;
      if (length > points) scaled[at + points + f] = by * im[f]!;
      any ||= re[f] !== 0;
    }
    moves[k] = any ? 1 : 0;
  }
  return { scaled, misses, misfit, moves };
}

/** The step, each unknown in its own spread; null where the equations cannot be solved. */
function stepOf(
  { matrix, gradient }: Equations,
  damping: number,
  fixed: ReadonlySet<number> | undefined,
  count: number,
): Float64Array | null {
  const damped = Float64Array.from(matrix);
  const right = Float64Array.from(gradient);
  for (let k = 0; k < count; k++) {
    damped[k * count + k]! *= 1 + damping;
    if (!fixed?.has(k)) continue;
    for (let l = 0; l < count; l++) {
      damped[k * count + l] = 0;
      damped[l * count + k] = 0;
    }
    damped[k * count + k] = 1;
    right[k] = 0;
  }
  const factor = choleskyFactor(damped, count, 1e-15);
  return factor === null ? null : choleskySolve(factor, count, right);
}

import { type FitParameter, type LeastSquaresFit, leastSquares, residualStatistics } from '../../math/index.ts';
import type { ImpedanceSweep } from './impedanceSweep.ts';

/** What is known of a parameter before: ln p is `logValue` ± `sd`. */
export interface Prior {
  readonly parameter: number;
  readonly logValue: number;
  readonly sd: number;
}

export interface ImpedanceTask {
  readonly sweeps: readonly ImpedanceSweep[];
  readonly parameters: readonly FitParameter[];
  /** Writes the model's impedance for one of the sweeps. */
  readonly modelInto: (
    re: Float64Array,
    im: Float64Array,
    omegas: Float64Array,
    values: Float64Array,
    sweep: number,
  ) => void;
  readonly priors?: readonly Prior[];
}

/** ln magnitude or phase of one sweep: its noise and what the model leaves over. */
export interface Channel {
  readonly sweep: number;
  readonly of: 'magnitude' | 'phase';
  /** Standard deviation of the residuals: relative for a magnitude, radians for a phase. */
  readonly noise: number;
  readonly residuals: Float64Array;
}

export interface ImpedanceFit {
  readonly fit: LeastSquaresFit;
  readonly channels: readonly Channel[];
  /** Schwarz's criterion over all channels, with the cost of moving away from what was known before. */
  readonly criterion: number;
  /** Greatest correlation of neighbouring residuals over the channels, in its own deviations: above 4 the model misses something. */
  readonly misfitScore: number;
  /** Factor on all deviations for residuals that go together. */
  readonly inflation: number;
}

/** No measurement is better than this; also keeps the choice of a model sound on data without noise. */
const LEAST_NOISE = 1e-6;
/** Beside what is known before, finer data would drown it in rounding. */
const LEAST_NOISE_BESIDE_PRIORS = 1e-4;
const FIRST_NOISE = 0.01;
const MOST_ROUNDS = 4;
const MOST_ITERATIONS = 100;
/** What is known before bends the valley that the search walks along. */
const MOST_ITERATIONS_BESIDE_PRIORS = 500;
export const MISFIT_SCORE = 4;

/**
 * Fits a model to one or several impedance sweeps at once: residuals are ln|Zmodel/Z| and the difference of phase.
 *
 * Each channel (magnitude and phase of each sweep) is weighted by its own noise, found in up to four rounds. The deviations
 * grow by √((1 + ρ)/(1 − ρ)) where neighbouring residuals are correlated by a significant ρ.
 * Source: feasible generalised least squares and a first-order autoregression's effective number of points, from memory.
 */
export function impedanceFit(task: ImpedanceTask): ImpedanceFit {
  const { sweeps, modelInto, priors = [] } = task;
  const prepared = sweeps.map(({ frequenciesHz, magnitudesOhm, phasesRad }) => ({
    omegas: frequenciesHz.map((f) => 2 * Math.PI * f),
    logs: magnitudesOhm.map(Math.log),
    phasesRad,
    re: new Float64Array(frequenciesHz.length),
    im: new Float64Array(frequenciesHz.length),
  }));
  const shapes = prepared.flatMap(({ omegas, phasesRad }, sweep) => [
    { sweep, of: 'magnitude' as const, length: omegas.length },
    ...(phasesRad === null ? [] : [{ sweep, of: 'phase' as const, length: omegas.length }]),
  ]);
  const points = shapes.reduce((sum, { length }) => sum + length, 0);
  const noise = shapes.map(() => FIRST_NOISE);
  const residualsInto = (out: Float64Array, values: Float64Array): void => {
    let at = 0;
    let channel = 0;
    prepared.forEach(({ omegas, logs, phasesRad, re, im }, sweep) => {
      const n = omegas.length;
      re.fill(0);
      im.fill(0);
      modelInto(re, im, omegas, values, sweep);
      const scale = 1 / noise[channel++]!;
      for (let i = 0; i < n; i++) out[at + i] = (0.5 * Math.log(re[i]! ** 2 + im[i]! ** 2) - logs[i]!) * scale;
      at += n;
      if (phasesRad === null) return;
      const turn = 1 / noise[channel++]!;
      for (let i = 0; i < n; i++) out[at + i] = halfTurn(Math.atan2(im[i]!, re[i]!) - phasesRad[i]!) * turn;
      at += n;
    });
    for (const { parameter, logValue, sd } of priors) out[at++] = (Math.log(values[parameter]!) - logValue) / sd;
  };
  const leastNoise = priors.length > 0 ? LEAST_NOISE_BESIDE_PRIORS : LEAST_NOISE;
  const mostIterations = priors.length > 0 ? MOST_ITERATIONS_BESIDE_PRIORS : MOST_ITERATIONS;
  const count = points + priors.length;
  // Of the residuals' sum of squares, what the parameters leave.
  const share = Math.max(0.1, 1 - task.parameters.length / points);
  let parameters = task.parameters;
  let fit = leastSquares({ parameters, count, residualsInto, variance: 'at-least-known' }, mostIterations);
  for (let round = 1; ; round++) {
    const previous = [...noise];
    let at = 0;
    shapes.forEach(({ length }, c) => {
      const rms = residualStatistics(fit.residuals.subarray(at, at + length)).rms * previous[c]!;
      noise[c] = Math.max(leastNoise, rms / Math.sqrt(share));
      at += length;
    });
    if (
      round >= MOST_ROUNDS ||
      !fit.converged ||
      noise.every((sd, c) => Math.abs(Math.log(sd / previous[c]!)) < 0.02)
    ) {
      noise.forEach((_, c) => {
        noise[c] = previous[c]!;
      });
      break;
    }
    parameters = parameters.map((parameter, j) => ({ ...parameter, start: fit.values[j]! }));
    fit = leastSquares({ parameters, count, residualsInto, variance: 'at-least-known' }, mostIterations);
  }
  let at = 0;
  const channels = shapes.map(({ sweep, of, length }, c) => {
    const residuals = fit.residuals.slice(at, at + length).map((r) => r * noise[c]!);
    at += length;
    return { sweep, of, residuals, noise: residualStatistics(residuals).rms / Math.sqrt(share) };
  });
  const priorCost = fit.residuals.subarray(points).reduce((sum, r) => sum + r * r, 0);
  const judgement = judged(channels, leastNoise);
  const criterion = judgement.deviance + priorCost + parameters.length * Math.log(points);
  return { fit, channels, criterion, misfitScore: judgement.misfitScore, inflation: judgement.inflation };
}

const halfTurn = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));

/** Twice the negative log likelihood less a constant, and what correlated residuals say. */
function judged(channels: readonly Channel[], leastNoise: number) {
  let deviance = 0;
  let misfitScore = 0;
  let inflation = 1;
  for (const { residuals } of channels) {
    const { rms, correlation, correlationScore } = residualStatistics(residuals);
    deviance += 2 * residuals.length * Math.log(Math.max(leastNoise, rms));
    if (rms <= leastNoise) continue;
    misfitScore = Math.max(misfitScore, correlationScore);
    if (correlationScore > MISFIT_SCORE) {
      const rho = Math.min(0.95, correlation);
      inflation = Math.max(inflation, Math.sqrt((1 + rho) / (1 - rho)));
    }
  }
  return { deviance, misfitScore, inflation };
}

import { type FitParameter, schwarzWeights } from '../../math/index.ts';
import { COIL_FORMS, type CoilForm, coilStarts } from './coilForms.ts';
import { COIL_AT } from './driverModel.ts';
import type { DriverStart } from './driverStart.ts';
import { type ImpedanceFit, impedanceFit, type Prior } from './impedanceFit.ts';
import type { ImpedanceSweep } from './impedanceSweep.ts';

/** One form of coil fitted to the data. */
export interface CoilCandidate {
  readonly form: CoilForm;
  readonly parameters: number;
  readonly result: ImpedanceFit;
}

/** How a form of coil did; weights of all that were determined add up to 1. */
export interface CoilRanking {
  readonly form: CoilForm;
  readonly parameters: number;
  readonly criterion: number;
  readonly weight: number;
  readonly rmsResidual: number;
}

export interface CoilTask {
  readonly sweeps: readonly ImpedanceSweep[];
  readonly start: Pick<DriverStart, 'reOhm' | 'fsHz' | 'qms' | 'qes' | 'coilOhm' | 'coilOmega'>;
  readonly modelInto: (
    re: Float64Array,
    im: Float64Array,
    omegas: Float64Array,
    values: Float64Array,
    sweep: number,
    coil: CoilForm,
  ) => void;
  /** Parameters that follow those of the coil; `modelInto` finds them at the end of its values. */
  readonly further?: readonly FitParameter[];
  readonly priors?: readonly Prior[];
  /** A prior on the first of the further parameters, whose place hangs on the coil. */
  readonly priorAfterCoil?: Omit<Prior, 'parameter'>;
}

/** By this much of Schwarz's criterion every further parameter must make it better: "strong" evidence begins at 6 (Kass and Raftery 1995). */
const MARGIN = 6;
const RANGE = 30;
const wide = (start: number): FitParameter => ({ start, least: start / RANGE, greatest: start * RANGE, scale: 'log' });

/** Fits every form of coil, each from its starts, and sorts those that the data determine, the best first. */
export function coilCandidates(task: CoilTask, forms: readonly CoilForm[] = COIL_FORMS): CoilCandidate[] {
  const { sweeps, start, further = [], priors = [], priorAfterCoil } = task;
  const resonance = [start.reOhm, start.fsHz, start.qms, start.qes].map(wide);
  const found = forms.flatMap((form): CoilCandidate[] => {
    const results = coilStarts(form, start.coilOhm, start.coilOmega).map((coil) =>
      impedanceFit({
        sweeps,
        parameters: [...resonance, ...coil, ...further],
        modelInto: (re, im, omegas, values, sweep) => task.modelInto(re, im, omegas, values, sweep, form),
        priors: priorAfterCoil ? [...priors, { ...priorAfterCoil, parameter: COIL_AT + coil.length }] : priors,
      }),
    );
    const sound = results.filter(({ fit }) => fit.converged && fit.covariance !== null);
    if (sound.length === 0) return [];
    const result = sound.reduce((a, b) => (b.criterion < a.criterion ? b : a));
    return [{ form, parameters: result.fit.values.length, result }];
  });
  const rank = ({ result, parameters }: CoilCandidate): number => result.criterion + MARGIN * parameters;
  return found.sort((a, b) => rank(a) - rank(b));
}

export function coilRanking(candidates: readonly CoilCandidate[]): CoilRanking[] {
  const { weights } = schwarzWeights(candidates.map(({ result }) => result.criterion));
  return candidates.map(({ form, parameters, result }, i) => {
    const residuals = result.channels.flatMap((channel) => [...channel.residuals]);
    const rmsResidual = Math.sqrt(residuals.reduce((sum, r) => sum + r * r, 0) / residuals.length);
    return { form, parameters, criterion: result.criterion, weight: weights[i]!, rmsResidual };
  });
}

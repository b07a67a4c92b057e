import type { FitParameter } from '../../math/index.ts';
import { type BoxLoss, boxLoad } from './boxModel.ts';
import type { BoxStart } from './boxStart.ts';
import { coilCandidates } from './coilChoice.ts';
import { COIL_COUNTS, type CoilForm } from './coilForms.ts';
import { COIL_AT, driverModelInto, FS_AT, QES_AT, QMS_AT, RE_AT } from './driverModel.ts';
import type { DriverStart } from './driverStart.ts';
import { type ImpedanceFit, impedanceFit, type Prior } from './impedanceFit.ts';
import type { ImpedanceSweep } from './impedanceSweep.ts';

/** What the driver is known to, as relative deviations: of its own fit, and what changed since. */
export interface DriverSpread {
  readonly re: number;
  readonly fs: number;
  readonly qms: number;
  readonly qes: number;
  /** Of Vas, or of the compliance: goes into the volume alone. */
  readonly vas: number;
  /** Of the moving mass through another air load in the box. */
  readonly mass: number;
}

/**
 * A spread for a driver measured well before: a coil some kelvin warmer or cooler (Re), a suspension that creeps and ages (fs, Qms),
 * Vas as good as an added mass gives, the air load of box and baffle. Common practice, no source.
 */
export const USUAL_SPREAD: DriverSpread = { re: 0.03, fs: 0.03, qms: 0.15, qes: 0.05, vas: 0.05, mass: 0.05 };

export interface BoxTask {
  readonly sweep: ImpedanceSweep;
  readonly start: Pick<DriverStart, 'reOhm' | 'fsHz' | 'qms' | 'qes' | 'coilOhm' | 'coilOmega'>;
  readonly spread: DriverSpread;
  readonly leadOhm: number;
  readonly kind: 'vented' | 'closed';
}

/** A fit of a box with one set of losses; places of its values in `result.fit`. */
export interface BoxCandidate {
  readonly losses: readonly BoxLoss[];
  readonly form: CoilForm;
  readonly result: ImpedanceFit;
  readonly massAt: number;
  readonly alphaAt: number;
  /** -1 where the box is closed. */
  readonly tuningAt: number;
  readonly lossesAt: number;
}

const RANGE = 30;
const log = (start: number, least: number, greatest: number): FitParameter => ({
  start,
  least,
  greatest,
  scale: 'log',
});
const lossParameter = (): FitParameter => log(15, 0.3, 3000);

/** Fits the box with each set of losses (leak, absorption, port), the coil's form chosen once; those that the data determine. */
export function boxCandidates(task: BoxTask, starts: readonly BoxStart[]): BoxCandidate[] {
  const possible: readonly BoxLoss[] = task.kind === 'vented' ? ['leak', 'absorption', 'port'] : ['leak', 'absorption'];
  const box = ({ alpha, tuningHz }: BoxStart): FitParameter[] => [
    log(1, 0.5, 2),
    log(alpha, alpha / RANGE, alpha * RANGE),
    ...(tuningHz === null ? [] : [log(tuningHz, tuningHz / 5, tuningHz * 5)]),
  ];
  const first = starts
    .map((start) => {
      const further = [...box(start), lossParameter()];
      const modelInto = modelFor(task, ['leak']);
      const priors = priorsFor(task, null);
      return coilCandidates({
        sweeps: [task.sweep],
        start: task.start,
        modelInto,
        further,
        priors,
        priorAfterCoil: massPrior(task),
      })[0];
    })
    .filter((candidate) => candidate !== undefined)
    .sort((a, b) => a.result.criterion - b.result.criterion)[0];
  if (first === undefined) return [];
  const { form } = first;
  const massAt = COIL_AT + COIL_COUNTS[form];
  const tuningAt = task.kind === 'vented' ? massAt + 2 : -1;
  const lossesAt = massAt + (task.kind === 'vented' ? 3 : 2);
  const found = first.result.fit.values;
  return subsets(possible).flatMap((losses): BoxCandidate[] => {
    const shared = parametersAt(task, form, found, lossesAt);
    const modelInto = modelFor(task, losses);
    const result = impedanceFit({
      sweeps: [task.sweep],
      parameters: [...shared, ...losses.map(lossParameter)],
      modelInto: (re, im, omegas, values, sweep) => modelInto(re, im, omegas, values, sweep, form),
      priors: priorsFor(task, massAt),
    });
    return result.fit.converged && result.fit.covariance !== null
      ? [{ losses, form, result, massAt, alphaAt: massAt + 1, tuningAt, lossesAt }]
      : [];
  });
}

const subsets = <T>(of: readonly T[]): T[][] =>
  Array.from({ length: 2 ** of.length }, (_, bits) => of.filter((_item, k) => (bits >> k) % 2 === 1));

const massPrior = ({ spread }: BoxTask): Omit<Prior, 'parameter'> => ({ logValue: 0, sd: spread.mass });

function priorsFor({ start, spread }: BoxTask, massAt: number | null): Prior[] {
  const prior = (parameter: number, value: number, sd: number): Prior => ({ parameter, logValue: Math.log(value), sd });
  return [
    prior(RE_AT, start.reOhm, spread.re),
    prior(FS_AT, start.fsHz, spread.fs),
    prior(QMS_AT, start.qms, spread.qms),
    prior(QES_AT, start.qes, spread.qes),
    ...(massAt === null ? [] : [prior(massAt, 1, spread.mass)]),
  ];
}

/** Wide bounds round the values of the first fit. */
function parametersAt({ kind }: BoxTask, form: CoilForm, found: Float64Array, count: number): FitParameter[] {
  const exponentAt = form === 'semi' ? COIL_AT + 1 : form === 'both' ? COIL_AT + 2 : -1;
  const massAt = COIL_AT + COIL_COUNTS[form];
  return Array.from({ length: count }, (_, j): FitParameter => {
    const value = found[j]!;
    if (j === exponentAt) return { start: value, least: 0.25, greatest: 1, scale: 'linear' };
    if (j === massAt) return log(value, 0.5, 2);
    if (kind === 'vented' && j === massAt + 2) return log(value, value / 5, value * 5);
    return log(value, value / 1e3, value * 1e3);
  });
}

const modelFor =
  ({ kind, leadOhm }: BoxTask, losses: readonly BoxLoss[]) =>
  (
    re: Float64Array,
    im: Float64Array,
    omegas: Float64Array,
    values: Float64Array,
    _sweep: number,
    coil: CoilForm,
  ): void => {
    let at = COIL_AT + COIL_COUNTS[coil];
    const [mass, alpha] = [values[at++]!, values[at++]!];
    const tuning = kind === 'vented' ? values[at++]! / values[FS_AT]! : null;
    const q = (loss: BoxLoss): number | null => (losses.includes(loss) ? values[at + losses.indexOf(loss)]! : null);
    const load = boxLoad({ mass, alpha, tuning, leak: q('leak'), absorption: q('absorption'), port: q('port') });
    driverModelInto(re, im, omegas, values, coil, load, leadOhm);
  };

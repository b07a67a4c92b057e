import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { type CoilCandidate, coilCandidates, coilRanking } from './coilChoice.ts';
import { COIL_FORMS, type CoilForm, ENTERED_FORMS, type EnteredForm } from './coilForms.ts';
import { driverFindings } from './driverFindings.ts';
import type { DriverFit, DriverFitOptions } from './driverFit.ts';
import { driverModelInto, FREE_AIR } from './driverModel.ts';
import { resonanceOf } from './driverResonance.ts';
import { type DriverStart, driverStart } from './driverStart.ts';
import { fittedCoil } from './fittedCoil.ts';
import { MISFIT_SCORE } from './impedanceFit.ts';
import { type ImpedanceSweep, partOfSweep } from './impedanceSweep.ts';

/** A criterion worse by this much is "very strong" evidence (Kass and Raftery 1995). */
export const DECISIVE = 10;
/** Upper ends tried when no coil fits the whole sweep, in resonances. */
const NARROWER = [24, 12, 6];

/**
 * Re, fs, Qms, Qes and the coil of a driver from its impedance in free air, with 95 % intervals.
 *
 * Starts are read off the curve; all forms of coil are fitted (ln|Z| and phase, logarithmic parameters) and compared. Resonance and
 * Re come from the form that the data prefer, so that a coil wished for in another form does not bend them; its own values are
 * then equivalents, and a finding says so. If no form fits the whole sweep (neighbouring residuals go together), resonance and Re
 * come from a band up to some multiples of fs, and intervals grow with what the forms differ by and with the correlation that
 * stays. Intervals speak of noise alone: temperature, drive and creep come on top.
 * Problems: `fits.few-points`, `fits.no-peak`, `fits.not-determined`. Findings: see `driverFindings`.
 * Source: R. H. Small, J. Audio Eng. Soc. 20 (1972) 383 (model); D. W. Marquardt 1963 (search).
 *
 * Example: fitDriver(impedanceSweep(curve), { coil: 'choose', leadOhm: 0, dcOhm: null })
 */
export function fitDriver(sweep: ImpedanceSweep, options: DriverFitOptions): Result<DriverFit> {
  const start = driverStart(sweep);
  if (!start.ok) return start;
  const leadOhm = options.leadOhm ?? 0;
  const candidates = fitIn(sweep, start.value, leadOhm);
  const [best] = candidates;
  const able = candidates.filter(({ form }) => enteredForm(form) !== null);
  const shown = able.find(({ form }) => form === options.coil) ?? able[0];
  if (best === undefined || shown === undefined) return fail(problem('fits.not-determined', { kind: 'curve' }));
  const misfit = best.result.misfitScore > MISFIT_SCORE;
  const narrower = misfit ? narrowed(sweep, start.value, leadOhm) : null;
  const used = narrower ?? {
    candidates,
    bandHz: [sweep.frequenciesHz[0]!, sweep.frequenciesHz.at(-1)!] as const,
  };
  const source = used.candidates[0]!;
  const rivals = misfit
    ? used.candidates.slice(1).filter((c) => c.result.criterion < source.result.criterion + DECISIVE)
    : [];
  const resonance = resonanceOf(source, rivals);
  if (resonance === null) return fail(problem('fits.not-determined', { kind: 'curve' }));
  const fitted = {
    ...resonance,
    coil: {
      ...fittedCoil(shown),
      form: enteredForm(shown.form)!,
      by: shown.form === options.coil ? ('wish' as const) : ('criterion' as const),
    },
    ranking: coilRanking(candidates),
    resonanceWith: source.form,
    bestCoil: fittedCoil(source),
    bandHz: used.bandHz,
    model: modelOf(best, sweep, leadOhm),
    channels: best.result.channels,
    iterations: best.result.fit.iterations,
  };
  const equivalent = shown.result.criterion > best.result.criterion + DECISIVE;
  return succeed({ ...fitted, findings: driverFindings(sweep, start.value, fitted, options, { equivalent, misfit }) });
}

const enteredForm = (form: CoilForm): EnteredForm | null => ENTERED_FORMS.find((entered) => entered === form) ?? null;

const fitIn = (sweep: ImpedanceSweep, start: DriverStart, leadOhm: number): CoilCandidate[] =>
  coilCandidates(
    {
      sweeps: [sweep],
      start,
      modelInto: (re, im, omegas, values, _sweep, coil) =>
        driverModelInto(re, im, omegas, values, coil, FREE_AIR, leadOhm),
    },
    COIL_FORMS,
  );

/** The fits in the widest band from the bottom in which a coil fits; null where none does. */
function narrowed(sweep: ImpedanceSweep, start: DriverStart, leadOhm: number) {
  for (const times of NARROWER) {
    const part = partOfSweep(sweep, 0, times * start.fsHz);
    const again = driverStart(part);
    if (!again.ok) return null;
    const candidates = fitIn(part, again.value, leadOhm);
    const [source] = candidates;
    if (source !== undefined && source.result.misfitScore <= MISFIT_SCORE - 1)
      return { candidates, bandHz: [part.frequenciesHz[0]!, part.frequenciesHz.at(-1)!] as const };
  }
  return null;
}

function modelOf({ form, result }: CoilCandidate, { frequenciesHz }: ImpedanceSweep, leadOhm: number) {
  const re = new Float64Array(frequenciesHz.length);
  const im = new Float64Array(frequenciesHz.length);
  const omegas = frequenciesHz.map((f) => 2 * Math.PI * f);
  driverModelInto(re, im, omegas, result.fit.values, form, FREE_AIR, leadOhm);
  return {
    magnitudesOhm: re.map((a, i) => Math.hypot(a, im[i]!)),
    phasesRad: re.map((a, i) => Math.atan2(im[i]!, a)),
  };
}

import type { AirProperties } from '../../acoustics/index.ts';
import { type Estimate, estimateOf, type FitParameter, fitEstimate } from '../../math/index.ts';
import { type Finding, fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { type BoxLoss, boxLoad } from './boxModel.ts';
import { type CoilCandidate, coilCandidates } from './coilChoice.ts';
import { COIL_COUNTS, type CoilForm } from './coilForms.ts';
import { COIL_AT, driverModelInto, FREE_AIR, FS_AT, QES_AT, QMS_AT, RE_AT } from './driverModel.ts';
import { type DriverResonance, resonanceOf } from './driverResonance.ts';
import { type DriverStart, driverStart } from './driverStart.ts';
import { type Channel, MISFIT_SCORE, type Prior } from './impedanceFit.ts';
import type { ImpedanceSweep } from './impedanceSweep.ts';

/** How the driver was changed for the second sweep, with the relative deviation to which mass or volume are known. */
export type SecondSweep =
  | { readonly kind: 'mass'; readonly sweep: ImpedanceSweep; readonly addedKg: number; readonly relativeSd: number }
  | {
      readonly kind: 'box';
      readonly sweep: ImpedanceSweep;
      /** Air behind the cone, its own hollow included. */
      readonly volumeM3: number;
      readonly relativeSd: number;
    };

export interface VasFitOptions {
  readonly sdM2: number;
  readonly sdRelativeSd: number;
  readonly air: AirProperties;
  /** Of both sweeps. */
  readonly leadOhm: number;
  /** How far the moving mass may change by another air load in the box, relative deviation. */
  readonly massSpread: number;
}

/** Vas and what follows from it with Sd; fs and the Qs from both sweeps together. */
export interface VasFit extends DriverResonance {
  readonly vasM3: Estimate;
  readonly mmsKg: Estimate;
  readonly cmsMPerN: Estimate;
  readonly blTm: Estimate;
  readonly rmsKgPerS: Estimate;
  readonly coilForm: CoilForm;
  /** Loss of the test box, Q at its resonance; null: none seen, or an added mass. */
  readonly boxLoss: { readonly loss: BoxLoss; readonly q: Estimate | null } | null;
  readonly channels: readonly Channel[];
  readonly findings: readonly Finding[];
}

/** A shift below this leaves Vas to chance. */
const LEAST_SHIFT = 0.1;
const RANGE = 30;
const log = (start: number, least: number, greatest: number): FitParameter => ({
  start,
  least,
  greatest,
  scale: 'log',
});

/**
 * Vas, Mms, Cms, Bl and Rms of a driver from two impedance sweeps fitted together: free air, and with a known mass on the cone or in
 * a known closed box.
 *
 * One set of values explains both curves; a box may add a leak or absorption, whichever the data ask for, and change the moving
 * mass within `massSpread`. Intervals hold 95 % for all together, with what mass, volume and Sd are uncertain by.
 * Vas = ρc² Sd² Cms, so an added mass gives Vas as uncertain as Sd², a box gives Mms so.
 * Problems: those of `driverStart` for each sweep, `fits.wrong-way`, `fits.not-determined`. Findings: `fits.added-too-little`,
 * `fits.model-misfit`. Source: R. H. Small, J. Audio Eng. Soc. 20 (1972) 383 (model).
 *
 * Example: fitVas(free, { kind: 'mass', sweep, addedKg: 0.02, relativeSd: 0.01 }, options)
 */
export function fitVas(free: ImpedanceSweep, second: SecondSweep, options: VasFitOptions): Result<VasFit> {
  const start = driverStart(free);
  const moved = driverStart(second.sweep);
  if (!start.ok || !moved.ok) return fail(...(start.ok ? [] : start.problems), ...(moved.ok ? [] : moved.problems));
  const [freeHz, secondHz] = [start.value.fsHz, moved.value.fsHz];
  const place = { kind: 'curve' } as const;
  const shift = secondHz / freeHz - 1;
  if (second.kind === 'mass' ? shift >= 0 : shift <= 0)
    return fail(problem('fits.wrong-way', place, { freeHz, secondHz }));
  const losses: readonly (BoxLoss | null)[] = second.kind === 'mass' ? [null] : [null, 'leak', 'absorption'];
  const tried = losses
    .flatMap((loss) => {
      const [best] = candidatesFor(free, second, options, start.value, shift, loss);
      return best === undefined ? [] : [{ loss, best }];
    })
    .sort((a, b) => a.best.result.criterion - b.best.result.criterion);
  const [found] = tried;
  const read = found === undefined ? null : readVas(found.best, found.loss, second, options);
  if (found === undefined || read === null) return fail(problem('fits.not-determined', place));
  const findings: Finding[] = [];
  if (Math.abs(shift) < LEAST_SHIFT)
    findings.push({ ...problem('fits.added-too-little', place, { shift: Math.abs(shift) }), severity: 'warning' });
  if (found.best.result.misfitScore > MISFIT_SCORE) {
    const toHz = free.frequenciesHz.at(-1)!;
    findings.push({ ...problem('fits.model-misfit', place, { narrowed: 0, toHz }), severity: 'warning' });
  }
  return succeed({ ...read, coilForm: found.best.form, channels: found.best.result.channels, findings });
}

function candidatesFor(
  free: ImpedanceSweep,
  second: SecondSweep,
  { leadOhm, massSpread }: VasFitOptions,
  start: DriverStart,
  shift: number,
  loss: BoxLoss | null,
): CoilCandidate[] {
  const ratio = (1 + shift) ** 2;
  // Behind the coil: moving mass over the added one; or mass in the box over that in free air, compliance ratio, loss.
  const guess = second.kind === 'mass' ? 1 / (1 / ratio - 1) : ratio - 1;
  const main = log(guess, guess / RANGE, guess * RANGE);
  const further =
    second.kind === 'mass' ? [main] : [log(1, 0.5, 2), main, ...(loss === null ? [] : [log(15, 0.3, 3000)])];
  const airLoad: Omit<Prior, 'parameter'> = { logValue: 0, sd: massSpread };
  return coilCandidates({
    sweeps: [free, second.sweep],
    start,
    further,
    ...(second.kind === 'box' ? { priorAfterCoil: airLoad } : {}),
    modelInto: (re, im, omegas, values, sweep, coil) => {
      const at = COIL_AT + COIL_COUNTS[coil];
      const load =
        sweep === 0
          ? FREE_AIR
          : second.kind === 'mass'
            ? { mass: 1 + 1 / values[at]!, air: null }
            : boxLoad({
                mass: values[at]!,
                alpha: values[at + 1]!,
                tuning: null,
                leak: loss === 'leak' ? values[at + 2]! : null,
                absorption: loss === 'absorption' ? values[at + 2]! : null,
                port: null,
              });
      driverModelInto(re, im, omegas, values, coil, load, leadOhm);
    },
  });
}

function readVas(
  candidate: CoilCandidate,
  loss: BoxLoss | null,
  second: SecondSweep,
  { sdM2, sdRelativeSd, air }: VasFitOptions,
): Omit<VasFit, 'coilForm' | 'channels' | 'findings'> | null {
  const resonance = resonanceOf(candidate);
  const { fit, inflation } = candidate.result;
  const { values } = fit;
  const ratioAt = COIL_AT + COIL_COUNTS[candidate.form] + (second.kind === 'mass' ? 0 : 1);
  const omegaS = 2 * Math.PI * values[FS_AT]!;
  const bulkPa = air.densityKgPerM3 * air.soundSpeedMPerS ** 2;
  // All are products of powers of fs, Re, Qes, Qms and the ratio, of the known mass or volume, and of Sd.
  const byMass = second.kind === 'mass';
  const mmsKg = byMass
    ? second.addedKg * values[ratioAt]!
    : (bulkPa * sdM2 ** 2) / (omegaS ** 2 * values[ratioAt]! * second.volumeM3);
  const sign = byMass ? 1 : -1;
  const fsOfMass = byMass ? 0 : -2;
  const read = (
    value: number,
    [massPower, fs, sd]: readonly [number, number, number],
    further: readonly (readonly [number, number])[] = [],
  ): Estimate | null => {
    const slopes = new Array<number>(values.length).fill(0);
    slopes[ratioAt] = sign * massPower;
    slopes[FS_AT] = fsOfMass * massPower + fs;
    for (const [at, slope] of further) slopes[at] = slopes[at]! + slope;
    const own = fitEstimate(fit, value, slopes, inflation);
    if (own === null) return null;
    const ofSd = sd + (byMass ? 0 : 2 * massPower);
    const spread = Math.hypot(own.relativeSd, massPower * second.relativeSd, ofSd * sdRelativeSd);
    return estimateOf(value, spread, fit.freedom, fit.held.filter((is) => !is).length);
  };
  const cmsMPerN = 1 / (omegaS ** 2 * mmsKg);
  const [re, qms, qes] = [values[RE_AT]!, values[QMS_AT]!, values[QES_AT]!];
  const estimates = {
    mmsKg: read(mmsKg, [1, 0, 0]),
    cmsMPerN: read(cmsMPerN, [-1, -2, 0]),
    vasM3: read(bulkPa * sdM2 ** 2 * cmsMPerN, [-1, -2, 2]),
    rmsKgPerS: read((omegaS * mmsKg) / qms, [1, 1, 0], [[QMS_AT, -1]]),
    blTm: read(
      Math.sqrt((omegaS * mmsKg * re) / qes),
      [0.5, 0.5, 0],
      [
        [RE_AT, 0.5],
        [QES_AT, -0.5],
      ],
    ),
  };
  const { vasM3, blTm, rmsKgPerS } = estimates;
  if (!resonance || !estimates.mmsKg || !estimates.cmsMPerN || !vasM3 || !blTm || !rmsKgPerS) return null;
  const q = values[ratioAt + 1];
  const unit = values.map((_, j) => (j === ratioAt + 1 ? 1 : 0));
  const boxLoss = loss === null || q === undefined ? null : { loss, q: fitEstimate(fit, q, [...unit], inflation) };
  return { ...resonance, mmsKg: estimates.mmsKg, cmsMPerN: estimates.cmsMPerN, vasM3, blTm, rmsKgPerS, boxLoss };
}

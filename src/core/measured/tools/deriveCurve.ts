import type { CurveTable, MeasuredCurve } from '../curveTable.ts';
import { logGrid } from '../logGrid.ts';
import { type EndSlopes, minimumPhase } from '../minimumPhase.ts';
import { delayPhaseRad } from '../propagationDelay.ts';
import { resampleCurve } from '../resampleCurve.ts';
import { smoothPower } from '../smoothPower.ts';
import { unwrapPhase } from '../unwrapPhase.ts';
import { changeLevel, moveDistance } from './moveDistance.ts';
import { smoothComplex } from './smoothComplex.ts';

/** What can be done to one curve, as plain data: a list of these and the original are kept, the result is worked out. */
export type CurveStep =
  | { readonly kind: 'smooth-power'; readonly fraction: number }
  | { readonly kind: 'smooth-complex'; readonly fraction: number; readonly delayS: number }
  | {
      readonly kind: 'resample';
      readonly fromHz: number;
      readonly toHz: number;
      readonly perOctave: number;
      /** Taken out of the phase before it is unwrapped and put back after; 0 where the phase turns slowly from point to point. */
      readonly delayS: number;
    }
  | { readonly kind: 'level'; readonly gainDb: number }
  | { readonly kind: 'distance'; readonly toM: number; readonly centreDepthM: number; readonly soundSpeedMPerS: number }
  | { readonly kind: 'minimum-phase'; readonly tails: EndSlopes };

const table = ({ quantity, frequenciesHz, magnitudes, phasesDeg }: MeasuredCurve): CurveTable => ({
  frequenciesHz: Float64Array.from(frequenciesHz),
  magnitudes: Float64Array.from(magnitudes, (m) => (quantity === 'response' ? 10 ** (m / 20) : m)),
  // As they were written, wrapped or not: only with the delay known can they be unwrapped.
  phasesRad: Float64Array.from(phasesDeg ?? frequenciesHz.map(() => 0), (deg) => (deg * Math.PI) / 180),
});

/**
 * The curve that steps make of an original, which stays as it is: undoing is leaving out the last step.
 *
 * A curve without phase has none after a step, except after `minimum-phase`; `smooth-complex` needs one, `distance` a response
 * (both throw a RangeError). Frequencies beyond the ends of a resampled curve are left out.
 * Example: deriveCurve(curve, [{ kind: 'level', gainDb: 3 }])
 */
export function deriveCurve(original: MeasuredCurve, steps: readonly CurveStep[]): MeasuredCurve {
  let curve = original;
  for (const step of steps) curve = afterStep(curve, step);
  return curve;
}

function afterStep(curve: MeasuredCurve, step: CurveStep): MeasuredCurve {
  const response = curve.quantity === 'response';
  const hasPhase = curve.phasesDeg !== null || step.kind === 'minimum-phase';
  const after = applied(step, table(curve), curve);
  return {
    ...curve,
    taken: step.kind === 'distance' ? { ...curve.taken, distanceM: step.toM } : curve.taken,
    frequenciesHz: [...after.frequenciesHz],
    magnitudes: Array.from(after.magnitudes, (m) => (response ? 20 * Math.log10(m) : m)),
    phasesDeg: hasPhase ? Array.from(after.phasesRad, (rad) => (rad * 180) / Math.PI) : null,
  };
}

function applied(step: CurveStep, before: CurveTable, { quantity, phasesDeg, taken }: MeasuredCurve): CurveTable {
  const { frequenciesHz } = before;
  switch (step.kind) {
    case 'smooth-power': {
      const levels = before.magnitudes.map((m) => 20 * Math.log10(m));
      return { ...before, magnitudes: smoothPower(frequenciesHz, levels, step.fraction).map((db) => 10 ** (db / 20)) };
    }
    case 'smooth-complex':
      if (phasesDeg === null) throw new RangeError('Complex smoothing takes a curve with phase.');
      return smoothComplex(before, step.fraction, step.delayS);
    case 'resample': {
      const fromHz = Math.max(step.fromHz, frequenciesHz[0]!);
      const toHz = Math.min(step.toHz, frequenciesHz.at(-1)!);
      const still = unwrapPhase(before.phasesRad.map((p, i) => p - delayPhaseRad(frequenciesHz[i]!, step.delayS)));
      const after = resampleCurve({ ...before, phasesRad: still }, logGrid(fromHz, toHz, step.perOctave));
      const phasesRad = after.phasesRad.map((p, i) => p + delayPhaseRad(after.frequenciesHz[i]!, step.delayS));
      return { ...after, phasesRad };
    }
    case 'level':
      return changeLevel(before, step.gainDb);
    case 'distance':
      if (quantity !== 'response') throw new RangeError('An impedance has no distance.');
      return moveDistance(before, taken.distanceM, step.toM, step.soundSpeedMPerS, step.centreDepthM);
    case 'minimum-phase':
      return { ...before, phasesRad: minimumPhase(frequenciesHz, before.magnitudes.map(Math.log), step.tails) };
  }
}

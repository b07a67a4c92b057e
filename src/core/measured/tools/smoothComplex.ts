import type { CurveTable } from '../curveTable.ts';
import { delayPhaseRad } from '../propagationDelay.ts';
import { unwrapPhase } from '../unwrapPhase.ts';

const STEPS_PER_WINDOW = 64;

/**
 * A curve smoothed over 1/`fraction` octave as a complex number: the mean of H in a window that is even in ln f.
 *
 * Averaging H loses level where its phase turns inside the window, by sinc(half the window's width in Hz times 2π delay), so
 * `delayS` is taken out before and put back after; what other phase is left still costs. Between points ln|H| and phase are
 * straight over ln f; 64 steps to the window. Towards the ends the window narrows on both sides; the end points stay.
 * Smooth after minimum phase and joining, never before. Throws a RangeError for a fraction that is not above 0.
 * Source: P. D. Hatziantoniou and J. N. Mourjopoulos, J. Audio Eng. Soc. 48 (2000) 259 (from memory).
 *
 * Example: smoothComplex(curve, 3, 0.003)
 */
export function smoothComplex(
  { frequenciesHz, magnitudes, phasesRad }: CurveTable,
  fraction: number,
  delayS: number,
): CurveTable {
  if (!(fraction > 0)) throw new RangeError('Smoothing takes a fraction above 0.');
  const n = frequenciesHz.length;
  const x = frequenciesHz.map(Math.log);
  const logs = magnitudes.map(Math.log);
  const phases = unwrapPhase(phasesRad.map((phase, i) => phase - delayPhaseRad(frequenciesHz[i]!, delayS)));
  const out = { magnitudes: Float64Array.from(magnitudes), phases: Float64Array.from(phases) };
  const halfWindow = Math.LN2 / (2 * fraction);
  for (let i = 0; i < n; i++) {
    const half = Math.min(halfWindow, x[i]! - x[0]!, x[n - 1]! - x[i]!);
    if (half <= 0) continue;
    let [re, im] = [0, 0];
    let j = i;
    while (j > 0 && x[j]! > x[i]! - half) j--;
    for (let k = 0; k < STEPS_PER_WINDOW; k++) {
      const at = x[i]! - half + ((k + 0.5) * 2 * half) / STEPS_PER_WINDOW;
      while (j < n - 2 && x[j + 1]! < at) j++;
      const share = (at - x[j]!) / (x[j + 1]! - x[j]!);
      const size = Math.exp(logs[j]! + share * (logs[j + 1]! - logs[j]!) - logs[i]!);
      const angle = phases[j]! + share * (phases[j + 1]! - phases[j]!) - phases[i]!;
      re += (size * Math.cos(angle)) / STEPS_PER_WINDOW;
      im += (size * Math.sin(angle)) / STEPS_PER_WINDOW;
    }
    out.magnitudes[i] = magnitudes[i]! * Math.hypot(re, im);
    out.phases[i] = phases[i]! + Math.atan2(im, re);
  }
  return {
    frequenciesHz,
    magnitudes: out.magnitudes,
    phasesRad: out.phases.map((phase, i) => phase + delayPhaseRad(frequenciesHz[i]!, delayS)),
  };
}

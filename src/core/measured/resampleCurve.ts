import { interpolateLogInto } from '../math/interpolateLog.ts';
import type { CurveTable } from './curveTable.ts';

/**
 * A curve at other frequencies: ln magnitude and unwrapped phase straight over ln f between points, held constant beyond
 * the ends. Error: second order in the step of ln f.
 *
 * `frequenciesHz` ascending and above 0. Magnitudes above 0.
 * Example: a curve resampled on its own frequencies is unchanged to rounding.
 */
export function resampleCurve(curve: CurveTable, frequenciesHz: Float64Array): CurveTable {
  const logMagnitudes = new Float64Array(frequenciesHz.length);
  const phasesRad = new Float64Array(frequenciesHz.length);
  interpolateLogInto(logMagnitudes, frequenciesHz, curve.frequenciesHz, curve.magnitudes.map(Math.log));
  interpolateLogInto(phasesRad, frequenciesHz, curve.frequenciesHz, curve.phasesRad);
  return { frequenciesHz, magnitudes: logMagnitudes.map(Math.exp), phasesRad };
}

import { scratchBuffers } from '../../math/scratchBuffers.ts';
import type { OpenBafflePaths } from './openBafflePaths.ts';
import { pistonDirectivitiesInto } from './pistonDirectivity.ts';

/** A path that stands for a stretch of lengths fades between these phases across the stretch, rad: there it averages out. */
const FADE_FROM_RAD = 2.5;
const FADE_TO_RAD = 5;

const scratch = scratchBuffers();

/**
 * Pressure of a driver on an open baffle, front and back together, relative to a point source of the same volume velocity in an infinite
 * baffle (p = jωρU exp(−jkr)/(2πr)), complex, for every angular frequency.
 *
 * ±[D(θ) − D(90°) Σ w exp(−jk·extra)], + in front; D = 2 J1(ka sin θ)/(ka sin θ). Low frequencies: jkD cos θ/2 with the length D of
 * `pistonDipoleLengthM`, the first-order rise with an exact slope; high ones in front: the driver in a wide baffle. Behind it is the same
 * with the sign turned; 0 in the panel's plane. `pistonRadiusM` of the equivalent flat piston (0 for a point source), `offAxisDeg` between
 * the nearer normal and the path (0 to 90; more counts from the other side), `omegas` rad/s, `out` as long.
 *
 * Error against the exact round panel (point driver, b its radius): on axis, driver at the centre or up to 0.7 b off, at most 1.6 dB up to
 * kb = 10, notches at 2 dB; at 0.9 b 3 dB; off axis 2.7 dB up to 45 degrees, 4.7 dB up to 75 (kb 1.5 to 2.5, too low). Rectangles
 * share the form and the static length (`dipoleLengthM`), their error above kb = 1 is not known. Two sources alone are up to 8 dB low
 * near the peak. The open back of a real frame, its walls and wings are not in it.
 * Source: derived here (edge wave of a thin screen; the disc solved in spheroidal functions in the test).
 *
 * Example: dipoleFactorInto(out, openBafflePaths(baffle, place, 0.08, { xM: 0, yM: 0, zM: 1 }), { pistonRadiusM: 0.08, offAxisDeg: 0 }, omegas, 343.2)
 */
export const dipoleFactorInto = (
  out: { readonly re: Float64Array; readonly im: Float64Array },
  paths: OpenBafflePaths,
  source: { readonly pistonRadiusM: number; readonly offAxisDeg: number },
  omegas: Float64Array,
  soundSpeedMPerS: number,
): void => {
  const { re, im } = out;
  const { pistonRadiusM, offAxisDeg } = source;
  const { extraM, weights, spreadM, side } = paths;
  const along = scratch.take(omegas.length);
  const ahead = scratch.take(omegas.length);
  pistonDirectivitiesInto(along, omegas, pistonRadiusM / soundSpeedMPerS);
  const sine = Math.sin((offAxisDeg * Math.PI) / 180);
  pistonDirectivitiesInto(ahead, omegas, (pistonRadiusM * sine) / soundSpeedMPerS);
  for (let i = 0; i < omegas.length; i++) {
    const k = omegas[i]! / soundSpeedMPerS;
    // Σ w (1 − exp(−jx)) = Σ w 2 sin(x/2) (sin(x/2) + j cos(x/2)): no cancellation at low frequencies.
    let real = 0;
    let imaginary = 0;
    let faded = 0;
    for (let n = 0; n < extraM.length; n++) {
      const phase = k * spreadM[n]!;
      const fade = phase <= FADE_FROM_RAD ? 1 : Math.max((FADE_TO_RAD - phase) / (FADE_TO_RAD - FADE_FROM_RAD), 0);
      const weight = weights[n]! * fade;
      faded += weights[n]! - weight;
      if (weight === 0) continue;
      const half = (k * extraM[n]!) / 2;
      const sin = Math.sin(half);
      real += 2 * weight * sin * sin;
      imaginary += 2 * weight * sin * Math.cos(half);
    }
    // D(θ) − D(90°) Σ w e = (D(θ) − D(90°)) + D(90°) Σ w (1 − e), what has faded being 0 in place of e.
    const edge = along[i]!;
    re[i] = side * (ahead[i]! - edge + edge * (real + faded));
    im[i] = side * edge * imaginary;
  }
  scratch.release();
};

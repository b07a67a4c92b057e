import { legendreChi } from './legendreChi.ts';

/**
 * How a magnitude goes on beyond its ends: d ln|H| / d ln f, so 12.04 dB to the octave is 2 (a second-order high-pass has
 * low 2) and 1/f² is high -2.
 */
export interface EndSlopes {
  readonly low: number;
  readonly high: number;
}

const QUARTER = Math.PI ** 2 / 4;

/** Integral of ln coth(|v|/2) from 0 to u: odd in u, π²/4 at infinity. */
const kernelIntegral = (u: number): number => (u === 0 ? 0 : Math.sign(u) * (QUARTER - 2 * legendreChi(Math.abs(u))));

/**
 * Phase in radians of a minimum-phase system whose ln|H| is straight between the given points on a logarithmic frequency
 * axis and goes on with `slopes` beyond them, at `atHz`.
 *
 * phi(w0) = (1/π) ∫ d ln|H|/du · ln coth(|u|/2) du with u = ln(w/w0); over a straight piece the integral is a difference of
 * F(u) = sgn(u)(π²/4 - 2 χ2(e^-|u|)), so the result is exact for the polygon (1e-13 rad). What remains is the error of the
 * polygon and of the slopes: 0.33, 0.08, 0.07 degrees from 10 Hz to 20 kHz at 6, 12, 24 points to the octave for a
 * fourth-order 50 Hz high-pass with a second-order 12 kHz low-pass known from 5 Hz to 40 kHz; 0.2 degrees at 40 kHz, where
 * the response has not quite its last slope.
 *
 * `frequenciesHz` ascending and above 0, `logMagnitudes` natural logarithms, equally long, 2 points or more (throws
 * otherwise). Cost: one function value per pair of points.
 * Source: H. W. Bode, Network Analysis and Feedback Amplifier Design (1945), chapter XIV; the closed form derived for this project.
 * Example: two points on a straight line with slopes 2 and 2 give π everywhere.
 */
export function minimumPhase(
  frequenciesHz: ArrayLike<number>,
  logMagnitudes: ArrayLike<number>,
  slopes: EndSlopes,
  atHz: ArrayLike<number> = frequenciesHz,
): Float64Array {
  const n = frequenciesHz.length;
  if (n < 2 || logMagnitudes.length !== n) throw new RangeError('Minimum phase takes two lists of 2 or more points.');
  const x = Float64Array.from(frequenciesHz, Math.log);
  // A polygon is bent at its points only: phi = (1/π) [n_low (π²/4 + F_1) + Σ s_i (F_i+1 - F_i) + n_high (π²/4 - F_N)],
  // gathered by point, so that F is taken once for each.
  const bends = new Float64Array(n);
  let before = slopes.low;
  for (let i = 0; i < n; i++) {
    const after = i === n - 1 ? slopes.high : (logMagnitudes[i + 1]! - logMagnitudes[i]!) / (x[i + 1]! - x[i]!);
    bends[i] = before - after;
    before = after;
  }
  const phases = new Float64Array(atHz.length);
  for (let k = 0; k < phases.length; k++) {
    const x0 = Math.log(atHz[k]!);
    let sum = (slopes.low + slopes.high) * QUARTER;
    for (let i = 0; i < n; i++) if (bends[i] !== 0) sum += bends[i]! * kernelIntegral(x[i]! - x0);
    phases[k] = sum / Math.PI;
  }
  return phases;
}

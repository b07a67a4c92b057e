import { type Complex, magnitude } from '../../math/complex.ts';
import { findRoot } from '../../math/findRoot.ts';

/**
 * Far-field pressure of a point source on a rigid sphere over that of the same source in free space, complex.
 *
 * `ka` above 0 up to about 200, angle from the source's axis in radians; the phase is referred to the sphere's centre.
 * H = (1/(ka)²) Σ (2n+1) j^(n−1) P_n(cos θ)/h_n'(ka), h_n = h_n^(2), summed until terms fall below 1e-17. Error below 1e-12.
 * Limits: 1 (0 dB) for small ka, 2 (+6.02 dB) on axis for large. Source: P. M. Morse, K. U. Ingard, Theoretical Acoustics, 1968,
 * chapter 7.
 *
 * Example: |spherePointSource(1, 0)| = 1.4184 (3.036 dB)
 */
export const spherePointSource = (ka: number, angleRad: number): Complex => {
  const cosine = Math.cos(angleRad);
  // h_n = j_n − j y_n by upward recurrence: y_n grows and rules, so that the error of j_n does not matter.
  let [jHere, yHere] = [Math.sin(ka) / ka, -Math.cos(ka) / ka];
  let [jNext, yNext] = [jHere / ka - Math.cos(ka) / ka, yHere / ka - Math.sin(ka) / ka];
  let [pHere, pNext] = [1, cosine];
  let re = 0;
  let im = 0;
  // j^(n−1), from n = 0
  let [turnRe, turnIm] = [0, -1];
  for (let n = 0; n < ka + 400; n++) {
    // h_n' = (n/x) h_n − h_(n+1)
    const dRe = (n / ka) * jHere - jNext;
    const dIm = -((n / ka) * yHere - yNext);
    const square = dRe * dRe + dIm * dIm;
    const weight = ((2 * n + 1) * pHere) / square;
    re += weight * (turnRe * dRe + turnIm * dIm);
    im += weight * (turnIm * dRe - turnRe * dIm);
    if (n > ka && (2 * n + 1) / Math.sqrt(square) < 1e-17 * ka * ka) break;
    const [jAfter, yAfter] = [((2 * n + 3) / ka) * jNext - jHere, ((2 * n + 3) / ka) * yNext - yHere];
    const pAfter = ((2 * n + 3) * cosine * pNext - (n + 1) * pHere) / (n + 2);
    [jHere, jNext, yHere, yNext, pHere, pNext] = [jNext, jAfter, yNext, yAfter, pNext, pAfter];
    [turnRe, turnIm] = [-turnIm, turnRe];
  }
  return { re: re / (ka * ka), im: im / (ka * ka) };
};

/**
 * ka of a rigid sphere at which a point source on it has risen half-way (+3.01 dB) on axis: 0.99205, so f D = 108.4 Hz·m at 343.2 m/s.
 *
 * The rule of thumb f = 115/W for a baffle of width W lies 6 % above it.
 */
export const sphereHalfStepKa = (): number =>
  findRoot((ka) => magnitude(spherePointSource(ka, 0)) - Math.SQRT2, 0.2, 2, 1e-14).x;

/** Frequency times diameter of that half-way point, Hz·m. */
export const sphereHalfStepHzM = (soundSpeedMPerS: number): number => (sphereHalfStepKa() * soundSpeedMPerS) / Math.PI;

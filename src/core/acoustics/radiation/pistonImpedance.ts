import { besselJ1 } from '../../math/bessel.ts';
import type { Complex } from '../../math/complex.ts';
import { struveH1 } from '../../math/struve.ts';

/** 1 − 2 J1(x)/x; as a series where the difference would lose digits. */
export const pistonResistance = (x: number): number => {
  if (x > 1) return 1 - (2 * besselJ1(x)) / x;
  const q = (x * x) / 4;
  let term = q / 2;
  let sum = 0;
  for (let k = 2; k < 14; k++) {
    sum += term;
    term *= -q / (k * (k + 1));
  }
  return sum;
};

/**
 * Radiation impedance of one side of a flat round piston in an infinite baffle, in units of ρcS (mechanical) or ρc/S (acoustical).
 *
 * z = 1 − 2 J1(2ka)/(2ka) + j 2 H1(2ka)/(2ka), any ka > 0; relative error below 1e-13. Small ka: (ka)²/2 + j 8ka/(3π).
 * A driver's Mms already holds this air load: it is not added again. Source: Lord Rayleigh, Theory of Sound, 1896, section 302;
 * L. E. Kinsler et al., Fundamentals of Acoustics, chapter 7.
 *
 * Example: pistonImpedance(1) = { re: 0.4233, im: 0.6468 }
 */
export const pistonImpedance = (ka: number): Complex => ({
  re: pistonResistance(2 * ka),
  im: struveH1(2 * ka) / ka,
});

import type { Admittance } from './admittance.ts';

/**
 * Admittance of resistance, mass and compliance in series: Y = 1/(R + jωM + 1/(jωC)), in whatever kind of unit the three share.
 *
 * `compliance` may be Infinity (no spring) and `mass` 0; the three must not all vanish together. Exact.
 *
 * Example: seriesResonator({ resistance: 0, mass: 0, compliance: 2 }) is jω·2.
 */
export const seriesResonator =
  (branch: { readonly resistance: number; readonly mass: number; readonly compliance: number }): Admittance =>
  (omegas, outRe, outIm) => {
    const { resistance, mass, compliance } = branch;
    for (let i = 0; i < omegas.length; i++) {
      const w = omegas[i]!;
      const reactance = w * mass - 1 / (w * compliance);
      const square = resistance * resistance + reactance * reactance;
      outRe[i] = resistance / square;
      outIm[i] = -reactance / square;
    }
  };

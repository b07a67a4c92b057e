import type { Admittance } from '../../../src/core/acoustics/index.ts';

/** An admittance at a list of frequencies (Hz) as complex numbers. */
export const admittanceAt = (
  admittance: Admittance,
  frequenciesHz: readonly number[],
): readonly { readonly re: number; readonly im: number }[] => {
  const omegas = Float64Array.from(frequenciesHz, (f) => 2 * Math.PI * f);
  const re = new Float64Array(omegas.length);
  const im = new Float64Array(omegas.length);
  admittance(omegas, re, im);
  return frequenciesHz.map((_, i) => ({ re: re[i]!, im: im[i]! }));
};

/** Air of the textbooks, for cases that state it. */
export const AIR = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 };

import type { Complex } from '../../../math/complex.ts';

/** Z = K (jω)^n. */
export interface PowerLawCoil {
  readonly kOhmSn: number;
  readonly exponent: number;
}

/** One impedance at one frequency, as two elements in series or side by side. */
export interface PowerLawElements {
  readonly seriesOhm: number;
  readonly seriesH: number;
  /** null at an exponent of 1: no loss, so no resistor beside the coil. */
  readonly parallelOhm: number | null;
  readonly parallelH: number;
}

/**
 * The elements that a power-law coil is worth at one angular frequency: R = K ω^n cos(nπ/2) and L = K ω^(n-1) sin(nπ/2) in
 * series, K ω^n / cos(nπ/2) and K ω^(n-1) / sin(nπ/2) side by side.
 *
 * `exponent` from above 0 to 1: 0.5 for pure eddy currents, 0.6 to 0.75 common, towards 0.9 with shorting rings (from memory).
 * Source: W. M. Leach, "Loudspeaker Voice-Coil Inductance Losses", JAES 50, 2002, 442 (form); element formulas derived.
 */
export function powerLawElements({ kOhmSn, exponent }: PowerLawCoil, omega: number): PowerLawElements {
  const angle = (exponent * Math.PI) / 2;
  const size = kOhmSn * omega ** exponent;
  const cosine = exponent === 1 ? 0 : Math.cos(angle);
  return {
    seriesOhm: size * cosine,
    seriesH: (size / omega) * Math.sin(angle),
    parallelOhm: cosine === 0 ? null : size / cosine,
    parallelH: size / omega / Math.sin(angle),
  };
}

/**
 * The power law that a data sheet's inductance at one frequency stands for, with an exponent taken from elsewhere.
 *
 * `series`: the sheet gives Im Z / ω, as most bridges do; `magnitude`: |Z| / ω. With only an inductance at 1 kHz known an
 * exponent of 0.65 to 0.7 is a safer guess than a pure coil (from memory), still ±25 % at 10 kHz.
 * @example powerLawFromInductance(0.5e-3, 1000, 0.68).kOhmSn // 0.00937
 */
export function powerLawFromInductance(
  leH: number,
  atHz: number,
  exponent: number,
  reading: 'series' | 'magnitude' = 'series',
): PowerLawCoil {
  const share = reading === 'series' ? Math.sin((exponent * Math.PI) / 2) : 1;
  return { kOhmSn: (leH * (2 * Math.PI * atHz) ** (1 - exponent)) / share, exponent };
}

/**
 * The power law through two impedances (the coil's resistance already taken off), ohm, at two frequencies: exponent by the
 * slope of |Z|, and by the phase at each. All three agree only for a true power law; the gap between them says how far to
 * trust it. K fits |Z| at both.
 */
export function powerLawThrough(
  lowHz: number,
  low: Complex,
  highHz: number,
  high: Complex,
): PowerLawCoil & { readonly exponentByPhaseLow: number; readonly exponentByPhaseHigh: number } {
  const sizes = [Math.hypot(low.re, low.im), Math.hypot(high.re, high.im)] as const;
  const exponent = Math.log(sizes[1] / sizes[0]) / Math.log(highHz / lowHz);
  const byPhase = (z: Complex): number => (2 * Math.atan2(z.im, z.re)) / Math.PI;
  return {
    kOhmSn: sizes[0] / (2 * Math.PI * lowHz) ** exponent,
    exponent,
    exponentByPhaseLow: byPhase(low),
    exponentByPhaseHigh: byPhase(high),
  };
}

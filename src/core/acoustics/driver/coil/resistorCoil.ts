import type { Complex } from '../../../math/complex.ts';

/** A coil in series with another that a resistor bridges; `seriesH` 0 for the two-element form. */
export interface ResistorCoil {
  readonly seriesH: number;
  readonly bridgedH: number;
  readonly bridgeOhm: number;
}

/**
 * Impedance of L1 + (L2 beside R2) at one angular frequency, ohm. One corner, R2/(2π L2).
 *
 * Against a true power law of exponent 0.68 the best fit is 22 % off over 200 Hz to 3 kHz and 37 % over 200 Hz to 20 kHz
 * (derived): good for the level at one crossover, not for phase over the band.
 */
export function resistorCoilOhm({ seriesH, bridgedH, bridgeOhm }: ResistorCoil, omega: number): Complex {
  const reactance = omega * bridgedH;
  const square = bridgeOhm ** 2 + reactance ** 2;
  return {
    re: (reactance ** 2 * bridgeOhm) / square,
    im: omega * seriesH + (reactance * bridgeOhm ** 2) / square,
  };
}

/** Inductance that an impedance is worth in series at one angular frequency, henry: Im Z / ω. */
export const seriesInductanceH = (impedance: Complex, omega: number): number => impedance.im / omega;

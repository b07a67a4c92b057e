import { type Complex, reciprocal } from '../../../math/complex.ts';

/** A coil over iron with a shorting ring; K of the semi-inductance in ohm s^(1/2). */
export interface ShortedCoil {
  /** Leakage inductance, in series with the rest. */
  readonly leakageH: number;
  readonly leH: number;
  readonly semiOhmS05: number;
  /** Of the ring as the coil sees it. */
  readonly shortingOhm: number;
}

/**
 * Impedance of s Lb + [1/(s Le) + 1/(K √s) + 1/Rs]⁻¹ at one angular frequency, s = jω, ohm.
 *
 * Towards low frequencies it becomes Le + Lb, towards high ones Rs + s Lb; with Le and Rs large and no Lb a power law of exponent 1/2.
 * Source: K. Thorborg, C. Futtrup, "Electrodynamic Transducer Model Incorporating Semi-Inductance and Means for Shorting AC
 * Magnetization", JAES 59, 2011, 612 (structure from memory).
 */
export function shortedCoilOhm({ leakageH, leH, semiOhmS05, shortingOhm }: ShortedCoil, omega: number): Complex {
  // 1/(K √(jω)) = (1 - j)/√2 / (K √ω)
  const semi = 1 / (semiOhmS05 * Math.sqrt(2 * omega));
  const core = reciprocal({ re: semi + 1 / shortingOhm, im: -semi - 1 / (omega * leH) });
  return { re: core.re, im: core.im + omega * leakageH };
}

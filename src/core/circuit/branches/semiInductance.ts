import type { Admittance, AdmittanceBranch } from '../branch.ts';
import { reciprocal, reciprocalDerivative } from './reciprocal.ts';

/** The impedance of eddy currents in a coil's iron: Z = K (jω)^n. K in ohm s^n; n is 0.5 for a full half-order coil. */
export interface SemiInductanceValues {
  readonly kOhmSn: number;
  readonly exponent: number;
}

/** (jω)^n over the sweep, times `factor`. */
export const semiImpedance =
  ({ kOhmSn, exponent }: SemiInductanceValues): Admittance =>
  (omegas, outRe, outIm) => {
    const cos = Math.cos((exponent * Math.PI) / 2);
    const sin = Math.sin((exponent * Math.PI) / 2);
    for (let f = 0; f < omegas.length; f++) {
      const magnitude = kOhmSn * omegas[f]! ** exponent;
      outRe[f] = magnitude * cos;
      outIm[f] = magnitude * sin;
    }
  };

/** dZ/dn = K (jω)^n (ln ω + jπ/2) */
export const semiImpedanceByExponent =
  (values: SemiInductanceValues): Admittance =>
  (omegas, outRe, outIm) => {
    semiImpedance(values)(omegas, outRe, outIm);
    for (let f = 0; f < omegas.length; f++) {
      const a = outRe[f]!;
      const b = outIm[f]!;
      const log = Math.log(omegas[f]!);
      outRe[f] = a * log - (b * Math.PI) / 2;
      outIm[f] = b * log + (a * Math.PI) / 2;
    }
  };

/**
 * A semi-inductance alone.
 * Source: J. R. Wright, "An Empirical Model for Loudspeaker Motor Impedance", JAES 38 (10), 1990, and
 * W. M. Leach, "Loudspeaker Voice-Coil Inductance Losses", JAES 50 (6), 2002 (from memory).
 * @example semiInductance('K1', ['a', 'b'], { kOhmSn: 0.02, exponent: 0.6 })
 */
export function semiInductance(
  id: string,
  nodes: readonly [string, string],
  values: SemiInductanceValues,
): AdmittanceBranch {
  const impedance = semiImpedance(values);
  return {
    kind: 'admittance',
    id,
    nodes,
    admittance: (omegas, outRe, outIm) => {
      impedance(omegas, outRe, outIm);
      reciprocal(outRe, outIm);
    },
    derivatives: {
      kOhmSn: {
        value: values.kOhmSn,
        derivative: reciprocalDerivative(impedance, semiImpedance({ ...values, kOhmSn: 1 })),
      },
      exponent: {
        value: values.exponent,
        derivative: reciprocalDerivative(impedance, semiImpedanceByExponent(values)),
      },
    },
  };
}

import type { Admittance, AdmittanceBranch } from '../branch.ts';
import { reciprocal, reciprocalDerivative } from './reciprocal.ts';
import { type SemiInductanceValues, semiImpedance, semiImpedanceByExponent } from './semiInductance.ts';

export interface CoilValues {
  readonly reOhm: number;
  readonly leH: number;
  readonly semiInductance: SemiInductanceValues | null;
}

/**
 * A voice coil held still: z = Re + jωLe + K (jω)^n, one branch. Sources: see semiInductance.ts.
 * @example coil('LS1 coil', ['plus', 'emf'], { reOhm: 5.8, leH: 0.4e-3, semiInductance: null })
 */
export function coil(id: string, nodes: readonly [string, string], values: CoilValues): AdmittanceBranch {
  const { reOhm, leH, semiInductance } = values;
  const impedance = coilImpedance(values);
  const by = (derivative: Admittance): Admittance => reciprocalDerivative(impedance, derivative);
  const unit: Admittance = (_omegas, outRe, outIm) => {
    outRe.fill(1);
    outIm.fill(0);
  };
  const jOmega: Admittance = (omegas, outRe, outIm) => {
    outRe.fill(0);
    outIm.set(omegas);
  };
  return {
    kind: 'admittance',
    id,
    nodes,
    admittance: (omegas, outRe, outIm) => {
      impedance(omegas, outRe, outIm);
      reciprocal(outRe, outIm);
    },
    derivatives: {
      reOhm: { value: reOhm, derivative: by(unit) },
      leH: { value: leH, derivative: by(jOmega) },
      ...(semiInductance === null
        ? {}
        : {
            kOhmSn: {
              value: semiInductance.kOhmSn,
              derivative: by(semiImpedance({ ...semiInductance, kOhmSn: 1 })),
            },
            exponent: { value: semiInductance.exponent, derivative: by(semiImpedanceByExponent(semiInductance)) },
          }),
    },
  };
}

/** The impedance of the coil held still, ohm, in the same form as an admittance. */
export const coilImpedance =
  ({ reOhm, leH, semiInductance }: CoilValues): Admittance =>
  (omegas, outRe, outIm) => {
    if (semiInductance === null) {
      outRe.fill(0);
      outIm.fill(0);
    } else semiImpedance(semiInductance)(omegas, outRe, outIm);
    for (let f = 0; f < omegas.length; f++) {
      outRe[f]! += reOhm;
      outIm[f]! += omegas[f]! * leH;
    }
  };

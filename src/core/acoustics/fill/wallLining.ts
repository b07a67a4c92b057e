import { complex, divide, multiply, scale } from '../../math/complex.ts';
import { hyperbolicTangent } from '../../math/hyperbolic.ts';
import type { Admittance } from '../admittance.ts';
import { type EquivalentFluid, fluidWave } from './equivalentFluid.ts';

/** Sheets on the walls of a chamber. */
export interface WallLining {
  readonly areaM2: number;
  readonly thicknessM: number;
  /** What they are made of, say `fibreFluid`. */
  readonly fluid: EquivalentFluid;
}

/**
 * Lining as a shunt at the chamber's node: Y = A tanh(jkt)/Zc, m³/(s·Pa), a layer with a hard wall behind it.
 *
 * Holds its own volume A t (take it off the rest: `volumeM3` of the chamber without the lining) with the gain of its fluid; as thick as it is, exact
 * for waves straight into it, corners counted twice. Damping of standing waves is outside a chamber of one node.
 * Source: impedance of a wall-backed layer (textbook).
 */
export const wallLiningAdmittance =
  (lining: WallLining): Admittance =>
  (omegas, outRe, outIm) => {
    for (let i = 0; i < omegas.length; i++) {
      const { impedancePaSPerM, wavenumberPerM } = fluidWave(lining.fluid(omegas[i]!), omegas[i]!);
      const angle = multiply(complex(0, lining.thicknessM), wavenumberPerM);
      const y = scale(divide(hyperbolicTangent(angle), impedancePaSPerM), lining.areaM2);
      outRe[i] = y.re;
      outIm[i] = y.im;
    }
  };

/** Volume that a lining takes of its chamber, m³. */
export const wallLiningVolumeM3 = (lining: Pick<WallLining, 'areaM2' | 'thicknessM'>): number =>
  lining.areaM2 * lining.thicknessM;

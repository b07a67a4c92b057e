import { add, type Complex, complex, divide, multiply, reciprocal, scale } from '../../math/complex.ts';
import type { Admittance } from '../admittance.ts';
import { absorptionResistancePaSPerM3, chamberComplianceM3PerPa } from '../chamber.ts';
import type { StatedLoss } from '../statedLoss.ts';
import type { ViscousAir } from '../viscousAir.ts';
import type { FibreFill } from './fibreFill.ts';
import { fillVolumeFactor } from './fillVolumeFactor.ts';

/** A chamber of which a share is stuffed. */
export interface FilledChamber {
  /** Net volume, fibres not taken off, m³. */
  readonly volumeM3: number;
  readonly fill: FibreFill;
  /** Share of the volume that is stuffed, 0 to 1; it lies against the wall that faces the cone. */
  readonly share: number;
  /** Length of the chamber from the cone to that wall, m: the way on which the air rubs. */
  readonly depthM: number;
  /** Fibres held in place (netted, wedged in), or free to be dragged along. */
  readonly held: boolean;
  /** Loss stated besides, in series; null: none. */
  readonly absorption: StatedLoss | null;
}

/**
 * Drag of a stuffed layer on the air that squeezes into it: σ t/(3S), the third because the air moves less the nearer the wall, with
 * the fibres' mass beside it where they are free: (σ ∥ jωm) t/(3S); t = share · depth, S = volume/depth.
 */
const dragPaSPerM3 = (chamber: FilledChamber, omega: number): Complex => {
  const { fill, share, depthM, volumeM3, held } = chamber;
  const shape = (share * depthM * depthM) / (3 * volumeM3);
  const sigma = fill.resistivityPaSPerM2;
  if (held) return complex(sigma * shape);
  const mass = complex(0, omega * fill.bulkDensityKgPerM3);
  return scale(divide(multiply(complex(sigma), mass), add(complex(sigma), mass)), shape);
};

const chamberAt = (chamber: FilledChamber, compliance: number, air: ViscousAir, omega: number): Complex => {
  const { fill, share } = chamber;
  const empty = complex(0, omega * compliance * (1 - share));
  if (share === 0) return empty;
  const spring = multiply(complex(0, omega * compliance * share), fillVolumeFactor(fill, air, omega));
  return add(empty, divide(spring, add(complex(1), multiply(spring, dragPaSPerM3(chamber, omega)))));
};

/**
 * A chamber, stuffed in part or whole, between its node and still air, m³/(s·Pa): volume gain AND damping from one flow resistivity.
 *
 * Y = jωC(1 − share) + 1/(1/(jωC share F(ω)) + drag): F is `fillVolumeFactor` (heat: gain with its own loss), drag the friction of the
 * air that is squeezed into the stuffing. Holds while the depth is below about a tenth
 * of a wave (as `chamberAdmittance`); first order in the stuffing's depth: within 1 % of the exact filled line at 40 Hz and 5 % at
 * 80 Hz for depths to 0.5 m and σ · depth to 1250 Pa·s/m.
 * Passive; with share 0 exactly `chamberAdmittance`. Leaving out the moving air's own mass, as that does. Source: low-frequency
 * expansion of Zc coth ΓL (derived here); see `fillVolumeFactor`.
 *
 * Example: 30 L, polyester 10 kg/m³ (σ 660), full, 0.25 m deep: as 38.6 L at 30 Hz, with a Q of 8.
 */
export const filledChamberAdmittance = (chamber: FilledChamber, air: ViscousAir): Admittance => {
  const compliance = chamberComplianceM3PerPa(chamber.volumeM3, air);
  const series = chamber.absorption ? absorptionResistancePaSPerM3(chamber.absorption, compliance) : 0;
  return (omegas, outRe, outIm) => {
    for (let i = 0; i < omegas.length; i++) {
      const bare = chamberAt(chamber, compliance, air, omegas[i]!);
      const y = series === 0 ? bare : reciprocal(add(reciprocal(bare), complex(series)));
      outRe[i] = y.re;
      outIm[i] = y.im;
    }
  };
};

/** What a fill does to a chamber at one frequency, for people to read. */
export interface FillEffect {
  /** Apparent over net volume: Im(Y)/(ωV/(ρc²)). */
  readonly volumeGain: number;
  /** Im(Y)/Re(Y): the quality factor of the chamber's air, heat and friction together; Infinity without any loss. */
  readonly airQ: number;
}

/** Volume gain and quality factor of a stuffed chamber's air, from its own admittance. */
export const fillEffect = (chamber: FilledChamber, air: ViscousAir, omega: number): FillEffect => {
  const compliance = chamberComplianceM3PerPa(chamber.volumeM3, air);
  const y = chamberAt(chamber, compliance, air, omega);
  return { volumeGain: y.im / (omega * compliance), airQ: y.im / y.re };
};

import { complex, reciprocal } from '../../math/complex.ts';
import type { EquivalentFluid, FluidState } from '../fill/equivalentFluid.ts';
import type { ViscousAir } from '../viscousAir.ts';
import { type DuctSection, ductAreaM2, ductSectionBetween } from './ductSection.ts';
import { filledLineConstants, type LineConstants, lineConstants } from './lineConstants.ts';
import { DEAF_NP, type PiForm, piForm, uniformPiForm } from './piForm.ts';
import { type Propagation, propagation } from './propagation.ts';
import { type Taper, taperTwoPort } from './taperTwoPort.ts';
import type { TwoPort } from './twoPort.ts';
import { uniformTwoPort } from './uniformTwoPort.ts';

/** A straight length of duct: uniform, or tapering to `farSection` along straight lines; of air, or filled with a fluid. */
export interface Duct {
  readonly section: DuctSection;
  readonly farSection?: DuctSection;
  readonly lengthM: number;
  /** What fills it; absent: air. */
  readonly fluid?: EquivalentFluid;
  /** Slices of a tapering duct, `TAPER_SLICES` when absent. */
  readonly slices?: number;
}

/** Slices of a taper when none are stated (`ductTwoPort` says how far that is off). */
export const TAPER_SLICES = 16;

const constantsOf = (
  section: DuctSection,
  filling: FluidState | undefined,
  air: ViscousAir,
  omega: number,
): LineConstants =>
  filling ? filledLineConstants(ductAreaM2(section), filling, omega) : lineConstants(section, air, omega);

/** Γ and Zc of a duct at its near end. */
export const ductPropagation = (duct: Duct, air: ViscousAir, omega: number): Propagation =>
  propagation(constantsOf(duct.section, duct.fluid?.(omega), air, omega));

/** A tapering duct as its area and line constants along the way, at one frequency. */
const taperOf = (duct: Duct, far: DuctSection, air: ViscousAir, omega: number): Taper => {
  const filling = duct.fluid?.(omega);
  const at = (share: number): DuctSection => ductSectionBetween(duct.section, far, share);
  return {
    lengthM: duct.lengthM,
    areaM2: (share) => ductAreaM2(at(share)),
    constants: (share) => constantsOf(at(share), filling, air, omega),
  };
};

/**
 * Two-port of a duct at one angular frequency: exact when uniform, by conical slices when it tapers.
 *
 * Plane waves: below the first cross mode (round: 0.586 c/diameter; slot: c/(2 width)). Bends count by their middle line. With
 * 16 slices the input impedance of an air-filled taper of 4:1 in area and 1.5 m is within 0.2 % of its highest peak up to 1 kHz and
 * within 5 % up to 2 kHz (peaks 0.05 % aside); the error goes as 1/slices².
 * Throws a RangeError when the two sections differ in kind.
 *
 * Example: ductTwoPort({ section: { kind: 'round', diameterM: 0.07 }, lengthM: 0.2 }, air, 2 * Math.PI * 40)
 */
export const ductTwoPort = (duct: Duct, air: ViscousAir, omega: number): TwoPort => {
  const { farSection, lengthM } = duct;
  if (farSection === undefined) return uniformTwoPort(ductPropagation(duct, air, omega), lengthM);
  return taperTwoPort(taperOf(duct, farSection, air, omega), duct.slices ?? TAPER_SLICES);
};

/** The same as the three admittances of its pi form; stays finite however long and stuffed the duct is. */
export const ductPiForm = (duct: Duct, air: ViscousAir, omega: number): PiForm => {
  const { farSection, lengthM } = duct;
  if (farSection === undefined) return uniformPiForm(ductPropagation(duct, air, omega), lengthM);
  const taper = taperOf(duct, farSection, air, omega);
  const [near, far] = [propagation(taper.constants(0)), propagation(taper.constants(1))];
  // Both ends bound what lies between: a taper attenuates most where it is narrowest.
  if (Math.min(near.gammaPerM.re, far.gammaPerM.re) * lengthM <= DEAF_NP)
    return piForm(taperTwoPort(taper, duct.slices ?? TAPER_SLICES));
  // Each end hears an endless line of its own section: the taper's own reflections are of the order of 1/attenuation.
  return {
    between: complex(0),
    nearShunt: reciprocal(near.impedancePaSPerM3),
    farShunt: reciprocal(far.impedancePaSPerM3),
  };
};

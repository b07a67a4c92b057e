import type { AirProperties } from '../airProperties.ts';
import { portMassKgPerM4 } from './portAdmittance.ts';

/** A vent filled with fibre or felt: what it is to the air in the chamber. */
export interface StuffedVent {
  /** Pa·s/m³. */
  readonly resistancePaSPerM3: number;
  /** kg/m⁴. */
  readonly massKgPerM4: number;
  /** Below this it is a resistance (its mass is a quarter of it or less), Hz. */
  readonly resistiveBelowHz: number;
}

/**
 * An aperiodic vent: R = σ t/S, mass ρ Leff/S, resistive while ω M < R/4.
 *
 * `flowResistivityPaSPerM2` σ of the filling, `depthM` t of it along the flow, `areaM2` S, `effectiveLengthM` with both ends. The
 * filling's fibres are taken not to move and to fill little of the section; low speeds (σ is constant there).
 * Source: definition of flow resistivity; derived.
 *
 * Example: σ 5000 in 80 cm², 40 mm deep: 25 kPa·s/m³
 */
export const stuffedVent = (
  vent: {
    readonly flowResistivityPaSPerM2: number;
    readonly depthM: number;
    readonly areaM2: number;
    readonly effectiveLengthM: number;
  },
  air: AirProperties,
): StuffedVent => {
  const resistancePaSPerM3 = (vent.flowResistivityPaSPerM2 * vent.depthM) / vent.areaM2;
  const massKgPerM4 = portMassKgPerM4(vent.areaM2, vent.effectiveLengthM, air);
  return {
    resistancePaSPerM3,
    massKgPerM4,
    resistiveBelowHz: resistancePaSPerM3 / (4 * massKgPerM4 * 2 * Math.PI),
  };
};

/**
 * The damping that a leak or stuffed vent gives the air spring of a chamber, Pa·s/m³: R/(1 + (ωRC)²), C its compliance.
 *
 * Greatest, 1/(2ωC), at ωRC = 1: more or less resistance damps less. Source: R across C, derived.
 */
export const ventDampingPaSPerM3 = (resistancePaSPerM3: number, complianceM3PerPa: number, omega: number): number =>
  resistancePaSPerM3 / (1 + (omega * resistancePaSPerM3 * complianceM3PerPa) ** 2);

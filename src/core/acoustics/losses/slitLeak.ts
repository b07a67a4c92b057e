import type { Admittance } from '../admittance.ts';
import { seriesResonator } from '../seriesResonator.ts';
import type { ViscousAir } from '../viscousAir.ts';

/** A crack through a wall: gap h, length along the joint, way through the wall, m. */
export interface SlitLeak {
  readonly gapM: number;
  readonly widthM: number;
  readonly throughM: number;
}

/**
 * Resistance of a crack, R = 12μ t/(h³ W), Pa·s/m³.
 *
 * Laminar flow, gap below the viscous layer (0.3 mm at 50 Hz); wider: `ductBranches` with a `slit`. Source: plane Poiseuille flow.
 *
 * Example: 0.3 mm by 100 mm through 18 mm: 1.45 MPa·s/m³, a QL of 97 for 40 L at 38 Hz
 */
export const slitLeakPaSPerM3 = (slit: SlitLeak, air: ViscousAir): number =>
  (12 * air.viscosityPaS * slit.throughM) / (slit.gapM ** 3 * slit.widthM);

/** Air mass in the crack, kg/m⁴: (6/5)ρt/(hW), the 6/5 from the parabolic profile of the speed. */
export const slitLeakMassKgPerM4 = (slit: SlitLeak, air: ViscousAir): number =>
  (1.2 * air.densityKgPerM3 * slit.throughM) / (slit.gapM * slit.widthM);

/** A crack from a chamber's node to still air, m³/(s·Pa): resistance and mass in series, as `slitLeakPaSPerM3`. */
export const slitLeakAdmittance = (slit: SlitLeak, air: ViscousAir): Admittance =>
  seriesResonator({
    resistance: slitLeakPaSPerM3(slit, air),
    mass: slitLeakMassKgPerM4(slit, air),
    compliance: Number.POSITIVE_INFINITY,
  });

/** Quality factor QL that a leak resistance means for a chamber at a frequency: R ω C. */
export const leakQ = (resistancePaSPerM3: number, atHz: number, complianceM3PerPa: number): number =>
  resistancePaSPerM3 * 2 * Math.PI * atHz * complianceM3PerPa;

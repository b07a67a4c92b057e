import { sectionInductanceH } from '../winding/sectionInductance.ts';
import { outerRadiusM } from '../winding/windingSection.ts';
import { coilMutualH, type PlacedCoil } from './placedCoil.ts';
import { lengthOf, minus } from './vector.ts';

// Filaments each way and points round a circle. Measured on equal square windings: beyond 1.25 outer diameters 3 and 24 are
// within 1e-6, side by side touching 6e-4; nearer than that, as stacked, more of both.
const APART = { filaments: 3, points: 24 } as const;
const CLOSE = { filaments: 5, points: 96 } as const;

/**
 * Coupling factor of two coils, −1 to 1: M/√(L1 L2) with the inductances of evenly spread current. The sign says whether the flux of one goes
 * through the other forwards.
 *
 * Air-core coils; accuracy as `coilMutualH`. For coils with a core the field outside is that of the open gap: treat as a dipole of the bar's
 * length and take distances half as long again (from memory).
 * @example couplingFactor(first, second) // −0.0115 for equal coils side by side at 1.5 diameters
 */
export function couplingFactor(first: PlacedCoil, second: PlacedCoil): number {
  return couplingBetween(first, second, sectionInductanceH(first.section), sectionInductanceH(second.section));
}

/** The same where both inductances (H) are known: what a search over positions uses, for they take most of the time. */
export const couplingBetween = (
  first: PlacedCoil,
  second: PlacedCoil,
  firstHenry: number,
  secondHenry: number,
): number => {
  const distanceM = lengthOf(minus(second.centre, first.centre));
  const isClose = distanceM < 1.05 * (outerRadiusM(first.section) + outerRadiusM(second.section));
  const { filaments, points } = isClose ? CLOSE : APART;
  return coilMutualH(first, second, filaments, points) / Math.sqrt(firstHenry * secondHenry);
};

/**
 * Voltage that leaks from one coil into another over the first's own voltage, the second carrying no current: |k| √(L2/L1), a ratio.
 *
 * Source: two coupled coils, v2 = jωM i1, derived.
 * @example crosstalkRatio(0.01, 1e-3, 1e-3) // 0.01, which is −40 dB
 */
export const crosstalkRatio = (coupling: number, firstHenry: number, secondHenry: number): number =>
  Math.abs(coupling) * Math.sqrt(secondHenry / firstHenry);

/**
 * Change of a coil's inductance by a large metal sheet across its axis at a distance (m) from the middle of its winding, a ratio: its image's coupling, added by iron,
 * taken off by copper or aluminium (at frequencies whose skin depth is below the sheet's thickness).
 *
 * An estimate: iron of infinite permeability, metal of infinite conductivity. Source: method of images, derived.
 * @example sheetEffect(section, 0.05, 'iron') // +0.01
 */
export function sheetEffect(section: PlacedCoil['section'], distanceM: number, sheet: 'iron' | 'non-magnetic'): number {
  const coil: PlacedCoil = { section, centre: [0, 0, 0], axis: [0, 0, 1] };
  const image = couplingFactor(coil, { ...coil, centre: [0, 0, 2 * distanceM] });
  return sheet === 'iron' ? image : -image;
}

import { pistonAirMassKg } from './pistonAirMass.ts';

/**
 * Air that moves with a flat disc without any baffle, both sides together, kg: 8 ρ a³/3, half of what an infinite baffle gives.
 *
 * Radius m, ρ kg/m³; ka well below 1. A finite panel lies between the two (no closed form known to us).
 * Source: H. Lamb, Hydrodynamics, 1932, section 102 (from memory); the test integrates the potential.
 *
 * Example: a = 0.1 m: 3.2 g
 */
export const freeDiscAirMassKg = (radiusM: number, densityKgPerM3: number): number =>
  (8 / 3) * densityKgPerM3 * radiusM ** 3;

/** A mass on a piston as an acoustic mass, kg/m⁴: m/S². */
export const acousticMassKgPerM4 = (massKg: number, areaM2: number): number => massKg / areaM2 ** 2;

/**
 * Moving mass of a driver without a baffle from its moving mass in an infinite one, kg: less by 8 ρ a³/3, so its fs is higher.
 *
 * `mmsKg` with the air load of both sides in a baffle. The other way round for a data sheet measured without a baffle: give −1 as
 * `sense`. Throws a RangeError when nothing is left. Source: `freeDiscAirMassKg` and `pistonAirMassKg`.
 *
 * Example: 30 g, a = 0.1 m: 26.8 g
 */
export const unbaffledMassKg = (mmsKg: number, radiusM: number, densityKgPerM3: number, sense: 1 | -1 = 1): number => {
  const differenceKg = pistonAirMassKg(radiusM, densityKgPerM3, 2) - freeDiscAirMassKg(radiusM, densityKgPerM3);
  const left = mmsKg - sense * differenceKg;
  if (!(left > 0)) throw new RangeError('the moving mass is less than the air load it is said to hold');
  return left;
};

/**
 * Air that moves with a flat round piston in an infinite baffle at low frequencies, kg: 8 ρ a³/3 for each side (radius m, ρ kg/m³).
 *
 * Without a baffle both sides together carry 8 ρ a³/3. Holds for ka well below 1.
 * Source: Lord Rayleigh, Theory of Sound, 1896, section 302.
 *
 * Example: a = 0.1 m, one side: 3.2 g
 */
export const pistonAirMassKg = (radiusM: number, densityKgPerM3: number, sides: 1 | 2): number =>
  sides * (8 / 3) * densityKgPerM3 * radiusM ** 3;

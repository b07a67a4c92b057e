/** One term of a heat path: what it adds to the rise once it has settled, K/W, and how long that takes, s. */
export interface HeatTerm {
  readonly resistanceKPerW: number;
  readonly timeConstantS: number;
}

/**
 * The way of the heat from a coil to the air of the room, as a sum of such terms: coil against magnet, magnet against air, and
 * a third one for the air in the box where somebody knows it.
 */
export type HeatPath = readonly HeatTerm[];

/**
 * Rise of the coil's temperature per watt after a step of power, K/W: the sum of R (1 - exp(-t/τ)). Infinity for `timeS` settles it.
 *
 * Foster form. A real motor is a chain (coil, magnet, air); with the same R and C read as either form the coil's temperature
 * differs by less than 2 R2 τ1/(R1 τ2): 2.6 % for R2 = 0.73 R1 and a magnet 50 times as slow. Forced cooling by the cone's
 * motion and radiation are left out. Source: the class of model of C. A. Henricksen, "Heat-transfer mechanisms in
 * loudspeakers", JAES 35, 1987, and D. J. Button, JAES 40, 1992 (from memory); form as derived.
 * @example heatResponseKPerW([{ resistanceKPerW: 3, timeConstantS: 8 }], 8) // 1.90
 */
export function heatResponseKPerW(path: HeatPath, timeS: number): number {
  let sum = 0;
  for (const { resistanceKPerW, timeConstantS } of path) sum -= resistanceKPerW * Math.expm1(-timeS / timeConstantS);
  return sum;
}

/** Rise of a coil at a constant power in its resistance (W) after a time, K. See `heatResponseKPerW`. */
export const temperatureRiseK = (powerW: number, path: HeatPath, timeS: number): number =>
  powerW * heatResponseKPerW(path, timeS);

/** Heat resistance from coil to air, all terms together, K/W. */
export const heatResistanceKPerW = (path: HeatPath): number =>
  path.reduce((sum, { resistanceKPerW }) => sum + resistanceKPerW, 0);

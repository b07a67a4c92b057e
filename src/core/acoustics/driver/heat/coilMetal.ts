/** What a voice coil is wound of. */
export type CoilMetal = 'copper' | 'aluminium';

/**
 * Temperature coefficient of resistance re 20 °C, 1/K, and specific heat, J/(kg·K).
 *
 * Copper: 0.00393/K at 20 °C, International Annealed Copper Standard (IEC 60028). Aluminium and both specific heats from memory.
 * Copper-clad aluminium with its insulation: about 800 J/(kg·K) and the coefficient of aluminium, from memory.
 */
export const COIL_METALS: Readonly<
  Record<CoilMetal, { readonly alphaPerK: number; readonly specificHeatJPerKgK: number }>
> = {
  copper: { alphaPerK: 0.00393, specificHeatJPerKgK: 385 },
  aluminium: { alphaPerK: 0.004, specificHeatJPerKgK: 897 },
};

/** Heat that warms a coil by one kelvin, J/K: mass (kg, wire alone) times specific heat; the former adds its own. */
export const coilHeatCapacityJPerK = (coilKg: number, metal: CoilMetal): number =>
  coilKg * COIL_METALS[metal].specificHeatJPerKgK;

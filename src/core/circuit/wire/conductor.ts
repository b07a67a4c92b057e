/** What wire is drawn from. Resistivity in ohm·m and its coefficient in 1/K hold at 20 °C, density in kg/m³. */
export interface Conductor {
  readonly resistivityOhmM: number;
  readonly alphaPerK: number;
  readonly densityKgPerM3: number;
}

/**
 * Annealed copper of standard conductivity, 58 MS/m at 20 °C.
 *
 * Source: IEC 60028:1925 (International Annealed Copper Standard): 1/58 Ω·mm²/m, 0.00393/K, 8.89 g/cm³ (density from memory).
 */
export const COPPER: Conductor = { resistivityOhmM: 1e-6 / 58, alphaPerK: 0.00393, densityKgPerM3: 8890 };

/** Aluminium wire: 0.0283 Ω·mm²/m, 0.00403/K, 2703 kg/m³ (IEC 60889 hard-drawn aluminium, from memory). */
export const ALUMINIUM: Conductor = { resistivityOhmM: 2.8264e-8, alphaPerK: 0.00403, densityKgPerM3: 2703 };

/**
 * Resistivity at a temperature in °C, ohm·m: ρ20 (1 + α (t − 20)). Straight, so within 1 % between −50 and 200 °C.
 * @example resistivityAtOhmM(COPPER, 60) // 1.995e-8
 */
export const resistivityAtOhmM = (conductor: Conductor, temperatureC: number): number =>
  conductor.resistivityOhmM * (1 + conductor.alphaPerK * (temperatureC - 20));

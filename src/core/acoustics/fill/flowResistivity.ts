import type { ViscousAir } from '../viscousAir.ts';

/**
 * Flow resistivity of glass or mineral wool, Pa·s/m²: σ = 3.18e-9 m^1.53/d² (bulk density m kg/m³, fibre diameter d m).
 *
 * Fibres of 2500 kg/m³; a spread of 30 % and more between products, 1.4 between the two directions of a sheet. A figure of the
 * maker, or a measured one, is always better. Source: D. A. Bies, C. H. Hansen, Applied Acoustics 13, 1980, 357 (from memory).
 *
 * Example: glass, 6 μm, 16 kg/m³: 6100
 */
export const mineralWoolResistivity = (bulkDensityKgPerM3: number, fibreDiameterM: number): number =>
  (3.18e-9 * bulkDensityKgPerM3 ** 1.53) / fibreDiameterM ** 2;

/** Density of the glass that `mineralWoolResistivity` was measured on, kg/m³. */
const GLASS_KG_PER_M3 = 2500;

/**
 * The same law at equal solid fraction, for other fibres: m is replaced by m · 2500/ρf.
 *
 * Meets `polyesterResistivity` within 2 % at 20 μm and 10 kg/m³ (where the unscaled law is 2.5 times low); elsewhere an estimate.
 * Source: scaling derived here.
 */
export const fibreResistivity = (
  bulkDensityKgPerM3: number,
  fibreDiameterM: number,
  fibreDensityKgPerM3: number,
): number => mineralWoolResistivity((bulkDensityKgPerM3 * GLASS_KG_PER_M3) / fibreDensityKgPerM3, fibreDiameterM);

/**
 * Flow resistivity of polyester wadding, Pa·s/m²: σ = 26.0 m^1.404 (bulk density m kg/m³), fibres of about 30 μm.
 *
 * Source: M. Garai, F. Pompoli, Applied Acoustics 66, 2005, 1383 (from memory).
 *
 * Example: 10 kg/m³: 660
 */
export const polyesterResistivity = (bulkDensityKgPerM3: number): number => 26 * bulkDensityKgPerM3 ** 1.404;

/**
 * What evenly spaced parallel fibres across the flow would have, Pa·s/m²: 4μs/(a²(−ln(s)/2 − 3/4 + s − s²/4)), solid fraction s, fibre
 * radius a. Real fill is clumped and has a fourth or a fifth of it: an upper bound.
 * Source: J. Happel, AIChE J. 5, 1959, 174 and S. Kuwabara 1959, cell model (derived anew).
 */
export const evenFibreResistivity = (fibreDiameterM: number, solidFraction: number, air: ViscousAir): number => {
  const s = solidFraction;
  const radiusM = fibreDiameterM / 2;
  return (4 * air.viscosityPaS * s) / (radiusM ** 2 * (-Math.log(s) / 2 - 3 / 4 + s - s ** 2 / 4));
};

import type { ViscousAir } from '../viscousAir.ts';

/**
 * Frequency below which the air in a fill follows the fibres' temperature, Hz, from the flow resistivity: σ/(4πρPr), about 0.093 σ.
 *
 * Rests on a thermal permeability of twice the viscous one (k0' = 2μ/σ), which holds for fibres in coaxial cells; the default here.
 * `least` is half of it, what the one-number fibre model implies (k0' = 4μ/σ). Real fill is expected between the two; even spacing
 * of the same fibres (`fibreCellTimeS`) is the upper bound, several times higher. No primary measurement was at hand.
 * Source: thermal permeability after D. Lafarge et al., J. Acoust. Soc. Am. 102, 1997, 1995; the ratio derived from the cell.
 *
 * Example: σ 660 Pa·s/m²: 61 Hz, least 31 Hz
 */
export const thermalCornerHz = (
  resistivityPaSPerM2: number,
  air: ViscousAir,
): { readonly usual: number; readonly least: number } => {
  const usual = resistivityPaSPerM2 / (4 * Math.PI * air.densityKgPerM3 * air.prandtl);
  return { usual, least: usual / 2 };
};

import { add, type Complex, complex, divide, squareRoot } from '../../math/complex.ts';
import { adiabaticModulusPa, type ViscousAir } from '../viscousAir.ts';
import type { EquivalentFluid } from './equivalentFluid.ts';

/** √(1 + jy) / (jy/2), the part that friction and heat share in this model. */
const rootPart = (y: number): Complex => divide(squareRoot(complex(1, y)), complex(0, 2 * y));

/** Effective density of the fibre model alone, kg/m³: ρ[1 + √(1 + jπX)/(j2πX)], X = ρf/σ; tends to σ/(jω) and to ρ. */
export const allardChampouxDensity = (resistivityPaSPerM2: number, air: ViscousAir, omega: number): Complex => {
  const piX = (air.densityKgPerM3 * omega) / (2 * resistivityPaSPerM2);
  const part = rootPart(piX);
  return { re: air.densityKgPerM3 * (1 + part.re), im: air.densityKgPerM3 * part.im };
};

/**
 * Fibres from one number, the flow resistivity σ: density as `allardChampouxDensity`, modulus
 * K = γP0/[γ − (γ − 1)/(1 + √(1 + j4πPrX)/(j8πPrX))], γP0 = ρc².
 *
 * Causal and passive at all frequencies; K runs from P0 to γP0. Fibres at rest and isothermal, porosity near 1. Its thermal corner
 * lies at half of `thermalCornerHz`, so that it gains less volume in the bass than the default of a filled chamber.
 * Source: J. F. Allard, Y. Champoux, J. Acoust. Soc. Am. 91, 1992, 3346 (from memory, both limits checked).
 *
 * Example: σ 1500 Pa·s/m² at 60 Hz slows a wave to 209 m/s and takes 12.4 dB a metre.
 */
export const allardChampouxFluid =
  (resistivityPaSPerM2: number, air: ViscousAir): EquivalentFluid =>
  (omega) => {
    const densityKgPerM3 = allardChampouxDensity(resistivityPaSPerM2, air, omega);
    const fourPiPrX = (2 * air.prandtl * air.densityKgPerM3 * omega) / resistivityPaSPerM2;
    const gamma = air.heatCapacityRatio;
    const heat = divide(complex(gamma - 1), add(complex(1), rootPart(fourPiPrX)));
    const modulusPa = divide(complex(adiabaticModulusPa(air)), complex(gamma - heat.re, -heat.im));
    return { densityKgPerM3, modulusPa };
  };

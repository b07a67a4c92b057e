import { add, type Complex, complex, divide, multiply, reciprocal, scale, subtract } from '../../math/complex.ts';
import { adiabaticModulusPa, type ViscousAir } from '../viscousAir.ts';
import { allardChampouxDensity } from './allardChampouxFluid.ts';
import type { EquivalentFluid } from './equivalentFluid.ts';
import type { FibreFill } from './fibreFill.ts';
import { fillVolumeFactor } from './fillVolumeFactor.ts';

/**
 * Density of a fill whose fibres are free to be dragged along: ρ + δm/(δ + m), δ = ρe − ρ the drag of fibres at rest, m the bulk density.
 *
 * Tends to ρ + m below σ/(2πm), to ρe above. Source: R. Panneton, J. Acoust. Soc. Am. 122, 2007, EL217, limp frame (from memory;
 * his form is this one with porosity 1).
 */
export const dragAlongDensity = (held: Complex, bulkDensityKgPerM3: number, air: ViscousAir): Complex => {
  const drag = subtract(held, complex(air.densityKgPerM3));
  const mass = complex(bulkDensityKgPerM3);
  return add(complex(air.densityKgPerM3), divide(multiply(drag, mass), add(drag, mass)));
};

/**
 * A fill as one fluid in which drag and heat come from the same flow resistivity: for lines that are stuffed and linings.
 *
 * Density of the fibre model, the fibres `held` in place or dragged along; modulus ρc²/`fillVolumeFactor`. Passive at all frequencies.
 * Source: `allardChampouxDensity`, `dragAlongDensity`, `fillVolumeFactor`.
 */
export const fibreFluid =
  (fill: FibreFill, held: boolean, air: ViscousAir): EquivalentFluid =>
  (omega) => {
    const atRest = allardChampouxDensity(fill.resistivityPaSPerM2, air, omega);
    return {
      densityKgPerM3: held ? atRest : dragAlongDensity(atRest, fill.bulkDensityKgPerM3, air),
      modulusPa: scale(reciprocal(fillVolumeFactor(fill, air, omega)), adiabaticModulusPa(air)),
    };
  };

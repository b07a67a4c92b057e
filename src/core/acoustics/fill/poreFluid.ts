import { add, type Complex, complex, divide, multiply, scale, squareRoot } from '../../math/complex.ts';
import { adiabaticModulusPa, type ViscousAir } from '../viscousAir.ts';
import type { EquivalentFluid } from './equivalentFluid.ts';

/** Open pores by the usual measures: porosity φ, tortuosity, flow resistivity, viscous and thermal lengths Λ and Λ'. */
export interface PoreFigures {
  readonly porosity: number;
  readonly tortuosity: number;
  readonly resistivityPaSPerM2: number;
  readonly viscousLengthM: number;
  readonly thermalLengthM: number;
}

/**
 * Characteristic lengths of thin fibres in a cross flow, m: Λ = 1/(π d l), Λ' = 2Λ, l = 4(1 − φ)/(π d²) the fibre length per volume.
 *
 * Dilute fibres. Source: J. F. Allard, Y. Champoux 1992 (from memory).
 */
export const fibreLengthsM = (
  fibreDiameterM: number,
  porosity: number,
): { readonly viscousLengthM: number; readonly thermalLengthM: number } => {
  const viscousLengthM = fibreDiameterM / (4 * (1 - porosity));
  return { viscousLengthM, thermalLengthM: 2 * viscousLengthM };
};

/** Effective density of the pores, kg/m³: (ρ t/φ)[1 + (σφ/(jωρt)) √(1 + j4t²μρω/(σΛφ)²)]. */
const poreDensity = (pores: PoreFigures, air: ViscousAir, omega: number): Complex => {
  const { porosity, tortuosity, resistivityPaSPerM2: sigma, viscousLengthM } = pores;
  const { densityKgPerM3: rho, viscosityPaS: mu } = air;
  const drag = (sigma * porosity) / (omega * rho * tortuosity);
  const root = squareRoot(
    complex(1, (4 * tortuosity ** 2 * mu * rho * omega) / (sigma * viscousLengthM * porosity) ** 2),
  );
  return scale(add(complex(1), multiply(complex(0, -drag), root)), (rho * tortuosity) / porosity);
};

/** K = (γP0/φ)/[γ − (γ − 1)/a] from the heat function a. */
const poreModulus = (heat: Complex, porosity: number, air: ViscousAir): Complex => {
  const exchanged = divide(complex(air.heatCapacityRatio - 1), heat);
  return divide(
    complex(adiabaticModulusPa(air) / porosity),
    complex(air.heatCapacityRatio - exchanged.re, -exchanged.im),
  );
};

/**
 * Modulus by thermal permeability: a = 1 + √(1 + jM ω'/2)/(jω'), ω' = ωρPr k0'/(μφ), M = 8k0'/(φΛ'²), Pa.
 *
 * Runs from P0/φ to γP0/φ. For loose fibres take k0' = 2μ/σ (`thermalCornerHz` says why); pores at rest, isothermal frame.
 * Source: D. Lafarge et al., J. Acoust. Soc. Am. 102, 1997, 1995.
 */
export const thermalPermeabilityModulus = (
  pores: Pick<PoreFigures, 'porosity' | 'thermalLengthM'> & { readonly thermalPermeabilityM2: number },
  air: ViscousAir,
  omega: number,
): Complex => {
  const { porosity, thermalLengthM, thermalPermeabilityM2: k0 } = pores;
  const speed = (omega * air.densityKgPerM3 * air.prandtl * k0) / (air.viscosityPaS * porosity);
  const m = (8 * k0) / (porosity * thermalLengthM ** 2);
  const heat = add(complex(1), divide(squareRoot(complex(1, (m * speed) / 2)), complex(0, speed)));
  return poreModulus(heat, porosity, air);
};

/**
 * Five-number pore model (Johnson, Champoux, Allard): density from σ and Λ, modulus from Λ' alone.
 *
 * The modulus is the one above with k0' = φΛ'²/8 (M = 1), which puts the thermal corner of loose fibres with Λ' = 2Λ far too low
 * (14 Hz for wadding of 20 μm, 10 kg/m³): for filling use `thermalPermeabilityFluid`. Foams and dense felts: as published.
 * Source: D. L. Johnson et al., J. Fluid Mech. 176, 1987, 379; Y. Champoux, J. F. Allard, J. Appl. Phys. 70, 1991, 1975.
 */
export const johnsonChampouxAllardFluid = (pores: PoreFigures, air: ViscousAir): EquivalentFluid =>
  thermalPermeabilityFluid({ ...pores, thermalPermeabilityM2: (pores.porosity * pores.thermalLengthM ** 2) / 8 }, air);

/** The same with the thermal permeability as a sixth number (Lafarge): density and modulus as above. */
export const thermalPermeabilityFluid =
  (pores: PoreFigures & { readonly thermalPermeabilityM2: number }, air: ViscousAir): EquivalentFluid =>
  (omega) => ({
    densityKgPerM3: poreDensity(pores, air, omega),
    modulusPa: thermalPermeabilityModulus(pores, air, omega),
  });

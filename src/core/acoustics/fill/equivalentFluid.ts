import { type Complex, complex, divide, multiply, scale, squareRoot } from '../../math/complex.ts';

/** A filled space at one frequency as if it held one fluid: per volume of the whole, fibres and air together. */
export interface FluidState {
  /** Effective density, kg/m³; its imaginary part is friction and never above 0. */
  readonly densityKgPerM3: Complex;
  /** Effective bulk modulus, Pa; its imaginary part is heat exchange and never below 0. */
  readonly modulusPa: Complex;
}

/** The fluid at any angular frequency, rad/s. */
export type EquivalentFluid = (omega: number) => FluidState;

/** How a plane wave runs in it: characteristic impedance of unit area, Pa·s/m, and wavenumber, 1/m (imaginary part below 0). */
export interface FluidWave {
  readonly impedancePaSPerM: Complex;
  readonly wavenumberPerM: Complex;
}

/** Zc = √(ρK), k = ω √(ρ/K). */
export const fluidWave = ({ densityKgPerM3, modulusPa }: FluidState, omega: number): FluidWave => ({
  impedancePaSPerM: squareRoot(multiply(densityKgPerM3, modulusPa)),
  wavenumberPerM: scale(squareRoot(divide(densityKgPerM3, modulusPa)), omega),
});

/** The other way: ρ = Zc k/ω, K = Zc ω/k. */
export const fluidOfWave = ({ impedancePaSPerM, wavenumberPerM }: FluidWave, omega: number): FluidState => ({
  densityKgPerM3: scale(multiply(impedancePaSPerM, wavenumberPerM), 1 / omega),
  modulusPa: scale(divide(impedancePaSPerM, wavenumberPerM), omega),
});

/** Attenuation of a wave in dB a metre, −20 log10(e) Im k. */
export const fluidAttenuationDbPerM = ({ wavenumberPerM }: FluidWave): number => (-20 * wavenumberPerM.im) / Math.LN10;

/** Speed at which its phase runs, ω/Re k, m/s. */
export const fluidPhaseSpeedMPerS = ({ wavenumberPerM }: FluidWave, omega: number): number => omega / wavenumberPerM.re;

/** Compliance of a filled volume over that of the same volume of plain air, ρc²/K (`adiabaticModulusPa` and its own modulus). */
export const fluidVolumeFactor = (modulusPa: Complex, adiabaticPa: number): Complex =>
  divide(complex(adiabaticPa), modulusPa);

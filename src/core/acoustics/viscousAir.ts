import type { AirProperties } from './airProperties.ts';

/** Air with what friction and heat at walls and fibres need besides. */
export interface ViscousAir extends AirProperties {
  /** Dynamic viscosity, Pa·s. */
  readonly viscosityPaS: number;
  /** Ratio of the specific heats, γ. */
  readonly heatCapacityRatio: number;
  /** Prandtl number, kinematic viscosity over thermal diffusivity. */
  readonly prandtl: number;
}

/** Specific heat of air at constant pressure, J/(kg·K): within 0.5 % from 0 to 40 °C, dry (handbook value, from memory). */
export const AIR_HEAT_J_PER_KG_K = 1005;

/**
 * Air at room conditions with its viscosity after Sutherland, γ = 1.401 and Pr = 0.71.
 *
 * μ = 1.716e-5 (T/273.15)^1.5 (273.15 + 110.4)/(T + 110.4): within 1 % from 0 to 40 °C; γ and Pr within 0.5 % there; humidity
 * left out. Source: W. Sutherland 1893 with the constants of F. M. White, Viscous Fluid Flow (from memory).
 *
 * Example: viscousAir(TEXTBOOK_AIR, 20).viscosityPaS = 1.813e-5
 */
export const viscousAir = (air: AirProperties, temperatureC: number): ViscousAir => {
  const kelvin = temperatureC + 273.15;
  return {
    densityKgPerM3: air.densityKgPerM3,
    soundSpeedMPerS: air.soundSpeedMPerS,
    viscosityPaS: (1.716e-5 * (kelvin / 273.15) ** 1.5 * (273.15 + 110.4)) / (kelvin + 110.4),
    heatCapacityRatio: 1.401,
    prandtl: 0.71,
  };
};

/** Adiabatic bulk modulus ρc² = γP0, Pa. */
export const adiabaticModulusPa = (air: AirProperties): number => air.densityKgPerM3 * air.soundSpeedMPerS ** 2;

/** Speed of sound of a gas from its static pressure, √(γP0/ρ), m/s. */
export const gasSoundSpeedMPerS = (staticPa: number, heatCapacityRatio: number, densityKgPerM3: number): number =>
  Math.sqrt((heatCapacityRatio * staticPa) / densityKgPerM3);

/**
 * Depth to which the wall's friction reaches, √(2ν/ω), m; for heat, divide by √Pr.
 *
 * Example: 0.35 mm at 40 Hz.
 */
export const viscousDepthM = (air: ViscousAir, omega: number): number =>
  Math.sqrt((2 * air.viscosityPaS) / (air.densityKgPerM3 * omega));

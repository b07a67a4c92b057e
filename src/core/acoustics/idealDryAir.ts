import type { AirProperties } from './airProperties.ts';

/** The rounded air of textbooks: dry, 20 °C, 101 325 Pa, ideal gas. */
export const TEXTBOOK_AIR: AirProperties = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 };

const GAS_CONSTANT = 8.314462618;
const MOLAR_MASS_KG = 28.9652e-3;
const HEAT_CAPACITY_RATIO = 1.4;

/**
 * Dry air as an ideal gas: ρ = pM/(RT), c = √(γRT/M), with γ = 1.4 and M = 28.9652 g/mol.
 *
 * Temperature in °C, pressure in Pa. Within 0.04 % of CIPM-2007 in density and of Cramer in speed for dry room air; moist air is
 * lighter and faster (20 °C, 50 %: 0.4 % and 0.2 %). Source: the ideal gas law; constants of CODATA 2018 and the US Standard
 * Atmosphere (from memory).
 *
 * Example: idealDryAir(20, 101325) = { densityKgPerM3: 1.20412, soundSpeedMPerS: 343.232 }
 */
export const idealDryAir = (temperatureC: number, pressurePa: number): AirProperties => {
  const kelvin = temperatureC + 273.15;
  return {
    densityKgPerM3: (pressurePa * MOLAR_MASS_KG) / (GAS_CONSTANT * kelvin),
    soundSpeedMPerS: Math.sqrt((HEAT_CAPACITY_RATIO * GAS_CONSTANT * kelvin) / MOLAR_MASS_KG),
  };
};

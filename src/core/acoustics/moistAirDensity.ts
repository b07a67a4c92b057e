/** Moist air by the CIPM-2007 equation: density and the mole fraction of water that it and the speed of sound share. */
export interface MoistAir {
  readonly densityKgPerM3: number;
  readonly waterMoleFraction: number;
}

// Coefficients of A. Picard, R. S. Davis, M. Gläser, K. Fujii, "Revised formula for the density of moist air (CIPM-2007)",
// Metrologia 45, 2008, 149, appendix A; from memory, checked against the worked values of the reference cases.
const GAS_CONSTANT = 8.314472;
const WATER_MOLAR_MASS = 18.01528e-3;
const REFERENCE_CO2 = 0.0004;
const ABSOLUTE_ZERO_C = -273.15;

/**
 * Density of moist air after CIPM-2007, kg/m³.
 *
 * Temperature in °C, pressure in Pa, relative humidity 0 to 1, mole fraction of carbon dioxide (0.0004 outdoors).
 * Stated for 15 to 27 °C and 60 to 110 kPa with a relative uncertainty of 2.2e-5; smooth and below 1e-3 off from 0 to 40 °C.
 * Unchecked kernel: `airProperties` checks the ranges.
 *
 * Example: moistAirDensity(20, 101325, 0.5, 0.0004).densityKgPerM3 = 1.19931
 */
export const moistAirDensity = (
  temperatureC: number,
  pressurePa: number,
  humidityFraction: number,
  co2Fraction: number,
): MoistAir => {
  const t = temperatureC;
  const kelvin = t - ABSOLUTE_ZERO_C;
  const saturationPa = Math.exp(
    1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin + 33.93711047 - 6.3431645e3 / kelvin,
  );
  const enhancement = 1.00062 + 3.14e-8 * pressurePa + 5.6e-7 * t * t;
  const xv = (humidityFraction * enhancement * saturationPa) / pressurePa;
  const dryMolarMass = (28.96546 + 12.011 * (co2Fraction - REFERENCE_CO2)) * 1e-3;
  const ratio = pressurePa / kelvin;
  const compressibility =
    1 -
    ratio *
      (1.58123e-6 -
        2.9331e-8 * t +
        1.1043e-10 * t * t +
        (5.707e-6 - 2.051e-8 * t) * xv +
        (1.9898e-4 - 2.376e-6 * t) * xv * xv) +
    ratio * ratio * (1.83e-11 - 0.765e-8 * xv * xv);
  const densityKgPerM3 =
    ((ratio * dryMolarMass) / (compressibility * GAS_CONSTANT)) * (1 - xv * (1 - WATER_MOLAR_MASS / dryMolarMass));
  return { densityKgPerM3, waterMoleFraction: xv };
};

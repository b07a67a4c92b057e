/** a0 to a15 of Cramer's polynomial; t in °C, p in Pa, mole fractions. */
export const CRAMER_COEFFICIENTS = [
  331.5024, 0.603055, -0.000528, 51.471935, 0.1495874, -0.000782, -1.82e-7, 3.73e-8, -2.93e-10, -85.20931, -0.228525,
  5.91e-5, -2.835149, -2.15e-13, 29.179762, 0.000486,
] as const;

/**
 * Speed of sound in moist air at zero frequency, m/s.
 *
 * Temperature in °C, pressure in Pa, mole fractions of water and carbon dioxide. Stated for 0 to 30 °C, 75 to 102 kPa, water below
 * 0.06, carbon dioxide up to 0.01, with 300 parts per million. Unchecked kernel: `airProperties` checks the ranges.
 * Source: O. Cramer, "The variation of the specific heat ratio and the speed of sound in air ...", J. Acoust. Soc. Am. 93, 1993,
 * 2510, equation 15.
 *
 * Example: cramerSoundSpeed(20, 101325, 0, 0.0004) = 343.359
 */
export const cramerSoundSpeed = (
  temperatureC: number,
  pressurePa: number,
  waterMoleFraction: number,
  co2Fraction: number,
): number => {
  const [a0, a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15] = CRAMER_COEFFICIENTS;
  const [t, p, xw, xc] = [temperatureC, pressurePa, waterMoleFraction, co2Fraction];
  return (
    a0 +
    a1 * t +
    a2 * t * t +
    (a3 + a4 * t + a5 * t * t) * xw +
    (a6 + a7 * t + a8 * t * t) * p +
    (a9 + a10 * t + a11 * t * t) * xc +
    a12 * xw * xw +
    a13 * p * p +
    a14 * xc * xc +
    a15 * xw * p * xc
  );
};

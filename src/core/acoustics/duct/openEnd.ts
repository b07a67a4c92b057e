import { sumChebyshev } from '../../math/chebyshev.ts';
import { add, type Complex, complex, divide, magnitude, phase, subtract } from '../../math/complex.ts';
import type { Admittance } from '../admittance.ts';
import type { AirProperties } from '../airProperties.ts';
import { pistonImpedance } from '../radiation/pistonImpedance.ts';

/** `free`: a thin-walled pipe that ends in open air; `flanged`: flush in a wide flat baffle, its air moving as a flat piston. */
export type OpenEnd = 'free' | 'flanged';

/** An open end at one ka: what it sends back, |R|, the length it adds in radii, and z in units of ρc/S. */
export interface OpenEndFigures {
  readonly reflection: number;
  readonly endRadii: number;
  readonly z: Complex;
}

const FIT_END = 3;
// −ln|R|/(ka)² and δ/a over 0 < ka < 3 as Chebyshev sums in 2ka/3 − 1, fitted to the integrals (the test repeats them).
const REFLECTION_FIT = Float64Array.of(
  0.33466436,
  -0.15060489,
  0.0244767,
  0.0013123,
  -0.00383061,
  0.00243834,
  -0.00119425,
  0.00052329,
  -0.00022044,
  9.558e-5,
  -4.586e-5,
  2.543e-5,
);
const LENGTH_FIT = Float64Array.of(
  0.46915092,
  -0.15772207,
  -0.00498981,
  0.00432543,
  -0.00325283,
  0.00109234,
  -0.00040477,
  9.666e-5,
  -2.007e-5,
  -2.21e-6,
);

const fitted = (fit: Float64Array, ka: number): number => sumChebyshev(fit, 0, fit.length, (2 * ka) / FIT_END - 1);

/** |R| beyond the fit: √(π ka) e^−ka (1 + 3/(32 (ka)²)), the large-ka form of the same paper. */
const farReflection = (ka: number): number => Math.sqrt(Math.PI * ka) * Math.exp(-ka) * (1 + 3 / (32 * ka * ka));

const freeEnd = (ka: number): OpenEndFigures => {
  const inside = ka < FIT_END;
  const reflection = inside ? Math.exp(-fitted(REFLECTION_FIT, ka) * ka * ka) : farReflection(ka);
  // Beyond the fit so little comes back that its angle no longer matters: it stays where it is.
  const endRadii = inside ? fitted(LENGTH_FIT, ka) : (fitted(LENGTH_FIT, FIT_END) * FIT_END) / ka;
  const angle = -2 * ka * endRadii;
  const back = complex(-reflection * Math.cos(angle), -reflection * Math.sin(angle));
  return { reflection, endRadii, z: divide(add(complex(1), back), subtract(complex(1), back)) };
};

const flangedEnd = (ka: number): OpenEndFigures => {
  const z = pistonImpedance(ka);
  const back = divide(subtract(z, complex(1)), add(z, complex(1)));
  return { reflection: magnitude(back), endRadii: -phase({ re: -back.re, im: -back.im }) / (2 * ka), z };
};

/**
 * Radiation of an open end at ka (radius a > 0): R = −|R| exp(−2j ka δ/a), z = (1 + R)/(1 − R).
 *
 * Free: own Chebyshev fit to the exact integrals for a thin pipe up to ka = 3, |R| within 0.02 % and δ within 0.003 %, beyond that
 * the large-ka form (|R| below 0.16, within 0.2 %, its angle held); low ka: z = (ka)²/4 + j 0.6127 ka. Flanged: `pistonImpedance`,
 * exact for a piston; a pipe's own air adds 3 % less at low ka (`FLANGED_END_RADII`). Round mouths; others by equal area, some per cent.
 * Source: H. Levine, J. Schwinger, "On the radiation of sound from an unflanged circular pipe", Phys. Rev. 73, 1948, 383 (integrals
 * from memory); cross-checked by the rational fit of J.-P. Dalmont, C. J. Nederveen, N. Joly, J. Sound Vib. 244, 2001, 505.
 *
 * Example: openEnd('free', 0.5) has |R| = 0.8964, δ = 0.5818 a, z = 0.0595 + j 0.2984
 */
export const openEnd = (end: OpenEnd, ka: number): OpenEndFigures => (end === 'free' ? freeEnd(ka) : flangedEnd(ka));

/**
 * An open mouth of area S as a load between its node and still air: Y = count S/(ρc z), m³/(s·Pa); the radius is that of the circle
 * of equal area; `count` equal mouths that do not feel one another.
 */
export const openEndAdmittance = (
  mouth: { readonly end: OpenEnd; readonly areaM2: number; readonly count: number },
  air: AirProperties,
): Admittance => {
  const radiusM = Math.sqrt(mouth.areaM2 / Math.PI);
  const unit = (mouth.count * mouth.areaM2) / (air.densityKgPerM3 * air.soundSpeedMPerS);
  return (omegas, outRe, outIm) => {
    for (let i = 0; i < omegas.length; i++) {
      const { z } = openEnd(mouth.end, (omegas[i]! * radiusM) / air.soundSpeedMPerS);
      const y = divide(complex(unit), z);
      outRe[i] = y.re;
      outIm[i] = y.im;
    }
  };
};

import { divide, multiply, scale } from '../../math/complex.ts';
import { hyperbolicCosine, hyperbolicSine } from '../../math/hyperbolic.ts';
import type { Propagation } from './propagation.ts';
import type { TwoPort } from './twoPort.ts';

/**
 * A uniform duct, lossy or filled: A = D = cosh ΓL, B = Zc sinh ΓL, C = sinh ΓL/Zc.
 *
 * Exact for plane waves; overflows beyond an attenuation of 700 Np. Source: transmission line theory.
 *
 * Example: 70 mm bore, 0.2 m, 40 Hz: A = 0.98914 + j 0.00016.
 */
export const uniformTwoPort = ({ gammaPerM, impedancePaSPerM3 }: Propagation, lengthM: number): TwoPort => {
  const angle = scale(gammaPerM, lengthM);
  const cosine = hyperbolicCosine(angle);
  const sine = hyperbolicSine(angle);
  return { a: cosine, b: multiply(impedancePaSPerM3, sine), c: divide(sine, impedancePaSPerM3), d: cosine };
};

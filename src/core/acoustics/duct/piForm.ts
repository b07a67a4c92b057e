import { type Complex, complex, divide, multiply, reciprocal, scale } from '../../math/complex.ts';
import { hyperbolicSine, hyperbolicTangent } from '../../math/hyperbolic.ts';
import type { Propagation } from './propagation.ts';
import type { TwoPort } from './twoPort.ts';

/**
 * A reciprocal two-port as three admittances, m³/(Pa·s): one between its ends, one from each end to still air.
 *
 * Each alone may have a negative real part; together they never give power.
 */
export interface PiForm {
  readonly between: Complex;
  readonly nearShunt: Complex;
  readonly farShunt: Complex;
}

/** Beyond this attenuation, Np, nothing of one end is felt at the other: e^−300. */
export const DEAF_NP = 300;

/**
 * Pi form of any reciprocal two-port: between 1/B, near shunt (D − 1)/B, far shunt (A − 1)/B.
 *
 * From both currents inward: Y11 = D/B, Y12 = −1/B, Y22 = A/B. Where |B| nearly vanishes (half waves without loss) the three grow
 * and cancel: they lose as many digits as |B| stands below its usual size; cut the duct in two there (`ductPieces`).
 */
export const piForm = ({ a, b, d }: TwoPort): PiForm => ({
  between: reciprocal(b),
  nearShunt: divide({ re: d.re - 1, im: d.im }, b),
  farShunt: divide({ re: a.re - 1, im: a.im }, b),
});

/** Pi form of a uniform duct, 1/(Zc sinh ΓL) and tanh(ΓL/2)/Zc: as `piForm`, without losing digits in a short or a deaf one. */
export const uniformPiForm = ({ gammaPerM, impedancePaSPerM3 }: Propagation, lengthM: number): PiForm => {
  const angle = scale(gammaPerM, lengthM);
  const shunt = divide(hyperbolicTangent(scale(angle, 0.5)), impedancePaSPerM3);
  const between = angle.re > DEAF_NP ? complex(0) : reciprocal(multiply(impedancePaSPerM3, hyperbolicSine(angle)));
  return { between, nearShunt: shunt, farShunt: shunt };
};

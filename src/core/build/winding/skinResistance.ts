import { type Complex, divide, multiply } from '../../math/complex.ts';
import { MU0 } from '../coils/vacuum.ts';

/**
 * Skin depth of a plain metal, m: √(2ρ/(ωμ0)).
 * @example skinDepthM(1.724e-8, 10000) // 0.66e-3
 */
export const skinDepthM = (resistivityOhmM: number, hz: number): number =>
  Math.sqrt(resistivityOhmM / (Math.PI * hz * MU0));

/**
 * Resistance of a straight round wire at a frequency over that to direct current (1 or more): Re[(ka/2) J0(ka)/J1(ka)], k = (1 − j)/δ.
 *
 * By the continued fraction of J1/J0, to 1e-12 up to radii of 100 skin depths. A lone wire: in a coil the neighbours' fields matter more,
 * `proximityOhm`. Source: textbook solution of the round wire, e.g. S. Ramo and J. R. Whinnery, Fields and Waves in Modern Radio, 1944
 * (from memory).
 * @example skinRatio(1e-3, 1.724e-8, 10000) // 1.03
 */
export function skinRatio(diameterM: number, resistivityOhmM: number, hz: number): number {
  const x = diameterM / 2 / skinDepthM(resistivityOhmM, hz);
  // z = ka has z² = −2j x². J1(z)/J0(z) = z/(2 − z²/(4 − z²/(6 − ...))), so (z/2) J0/J1 = (2 − z²/(4 − ...))/2.
  const square: Complex = { re: 0, im: -2 * x * x };
  const terms = Math.ceil(2 * x) + 30;
  let fraction: Complex = { re: 2 * terms, im: 0 };
  for (let n = terms - 1; n >= 1; n--) {
    const rest = divide(square, fraction);
    fraction = { re: 2 * n - rest.re, im: -rest.im };
  }
  return multiply(fraction, { re: 0.5, im: 0 }).re;
}

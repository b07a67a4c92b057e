import { ellipticIntegrals } from '../../math/ellipticIntegrals.ts';
import { MU0 } from './vacuum.ts';

/**
 * Mutual inductance of two coaxial circles, H: radii `aM`, `bM` and distance of their planes `distanceM`, all in m. Infinite thin:
 * throws a RangeError where the two are one circle.
 *
 * Source: J. C. Maxwell, A Treatise on Electricity and Magnetism, art. 701; DLMF 19.34:
 * μ0 √(ab) [(2/k − k) K − (2/k) E], k² = 4ab/((a + b)² + h²).
 * @example ringMutualH(0.03, 0.025, 0.04) // 7.168e-9
 */
export function ringMutualH(aM: number, bM: number, distanceM: number): number {
  const m = (4 * aM * bM) / ((aM + bM) ** 2 + distanceM ** 2);
  if (m < 1e-3) return farRings(aM, bM, m);
  const { k, e } = ellipticIntegrals(m);
  const modulus = Math.sqrt(m);
  return MU0 * Math.sqrt(aM * bM) * ((2 / modulus - modulus) * k - (2 / modulus) * e);
}

/** The brackets cancel for far rings; their series in m = k² is (π/16) k³ (1 + 3m/4 + 75m²/128 + ...). */
const farRings = (aM: number, bM: number, m: number): number =>
  MU0 * Math.sqrt(aM * bM) * (Math.PI / 16) * m ** 1.5 * (1 + 0.75 * m + (75 / 128) * m * m);

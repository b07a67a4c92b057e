import { besselJ0, besselJ1 } from './bessel.ts';

/**
 * The nth positive zero of J1 (n = 1, 2, ...), to the last digit of a double.
 *
 * Starts from McMahon's expansion (DLMF 10.21.19) and improves by Newton steps with J1' = J0 − J1/x.
 * Throws a RangeError unless n is a whole number from 1 on.
 *
 * Example: besselJ1Zero(1) = 3.831705970207512
 */
export const besselJ1Zero = (n: number): number => {
  if (!Number.isInteger(n) || n < 1) throw new RangeError(`besselJ1Zero counts from 1, not ${n}`);
  const b = (n + 0.25) * Math.PI;
  let x = b - 3 / (8 * b) + 36 / (3 * (8 * b) ** 3);
  for (let i = 0; i < 3; i++) {
    const value = besselJ1(x);
    x -= value / (besselJ0(x) - value / x);
  }
  return x;
};

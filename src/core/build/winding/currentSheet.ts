import { ellipticIntegrals } from '../../math/ellipticIntegrals.ts';
import { MU0 } from '../coils/vacuum.ts';
import type { Solenoid } from './wheeler.ts';

/**
 * Inductance of a single layer as a cylindrical sheet of current, H: exact for the sheet; a coil of spaced round wires has up to a few per
 * cent less.
 *
 * Source: L. Lorenz, 1879, as in E. B. Rosa and F. W. Grover, "Formulas and Tables for the Calculation of Mutual and Self-Inductance",
 * 1912 (from memory): (8 μ0 N² a³/(3 l²)) [((2k² − 1)/k³) E + ((1 − k²)/k³) K − 1], k² = 4a²/(4a² + l²).
 * @example currentSheetH({ radiusM: 0.0127, lengthM: 0.0254, turns: 50 }) // 43.14e-6
 */
export function currentSheetH({ radiusM, lengthM, turns }: Solenoid): number {
  const m = (4 * radiusM ** 2) / (4 * radiusM ** 2 + lengthM ** 2);
  const { k, e } = ellipticIntegrals(m);
  const bracket = ((2 * m - 1) * e + (1 - m) * k) / m ** 1.5 - 1;
  return ((8 * MU0 * turns ** 2 * radiusM ** 3) / (3 * lengthM ** 2)) * bracket;
}

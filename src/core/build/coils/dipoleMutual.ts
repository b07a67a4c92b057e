import type { Circle } from './circleMutual.ts';
import { MU0 } from './vacuum.ts';
import { dot, lengthOf, minus, unit } from './vector.ts';

/**
 * Mutual inductance of two circles as magnetic dipoles, H: (μ0 π a² b²/(4 d³)) (3 (n1·r)(n2·r) − n1·n2).
 *
 * Far field: for circles side by side at 1.5 times the sum of their radii still 28 % low. Throws where the centres coincide.
 * Source: field of a dipole, derived.
 * @example dipoleMutualH(circle, { ...circle, centre: [0, 0, 0.12] })
 */
export function dipoleMutualH(first: Circle, second: Circle): number {
  const between = minus(second.centre, first.centre);
  const distance = lengthOf(between);
  const towards = unit(between);
  const [n1, n2] = [unit(first.axis), unit(second.axis)];
  const scale = (MU0 * Math.PI * (first.radiusM * second.radiusM) ** 2) / (4 * distance ** 3);
  return scale * (3 * dot(n1, towards) * dot(n2, towards) - dot(n1, n2));
}

import { gaussLegendre } from '../../math/gaussLegendre.ts';
import type { PartTolerance, Spread } from './toleranceSpec.ts';

const RULE = gaussLegendre(40);

/**
 * Standard deviation of a spread whose greatest departure is 1. Uniform: 1/√3. Normal, cut off at k standard deviations:
 * (1/k) √(∫ x² φ / ∫ φ) between -k and k, by 40 points of Gauss and Legendre (to 1e-12 for k up to 6).
 * @example spreadDeviation({ kind: 'uniform' }) // 0.577
 */
export function spreadDeviation(spread: Spread): number {
  if (spread.kind === 'uniform') return 1 / Math.sqrt(3);
  const { sigmas } = spread;
  let mass = 0;
  let square = 0;
  RULE.nodes.forEach((node, i) => {
    const x = sigmas * node;
    const density = RULE.weights[i]! * Math.exp((-x * x) / 2);
    mass += density;
    square += density * x * x;
  });
  return Math.sqrt(square / mass) / sigmas;
}

/**
 * Standard deviations of one loudspeaker's part, and of the difference between left and right, both relative. A matched pair
 * shares a centre, drawn within what the match leaves of the tolerance, and lies up to half the match either side of it.
 */
export function partDeviations(part: PartTolerance): { readonly own: number; readonly difference: number } {
  const unit = spreadDeviation(part.spread);
  const half = halfMatch(part);
  if (half === null) return { own: unit * part.tolerance, difference: Math.SQRT2 * unit * part.tolerance };
  const apart = half / Math.sqrt(3);
  return { own: Math.hypot(unit * (part.tolerance - half), apart), difference: 2 * apart };
}

/** Half of the match, at most the tolerance itself. */
export const halfMatch = ({ matchedWithin, tolerance }: PartTolerance): number | null =>
  matchedWithin === null ? null : Math.min(matchedWithin / 2, tolerance);

import { ellipticIntegrals } from '../../math/ellipticIntegrals.ts';
import { MU0 } from './vacuum.ts';
import { across, dot, lengthOf, minus, plus, times, unit, type Vector } from './vector.ts';

/** A circular filament anywhere: centre and radius in m, and its axis (any length), current right-handed about it. */
export interface Circle {
  readonly centre: Vector;
  readonly axis: Vector;
  readonly radiusM: number;
}

/**
 * Mutual inductance of two circles in any position, H; negative where the flux of one goes through the other backwards.
 *
 * Neumann's double integral M = (μ0/4π) ∮∮ ds1·ds2/R with the inner integral in closed form (the vector potential of a circle) and the
 * outer one by `points` equally spaced points, which converges faster than any power: 1e-9 with 60 points for circles no nearer than
 * half a radius, more points for nearer ones. Source: F. E. Neumann, 1845; the vector potential as in W. R. Smythe, Static and Dynamic
 * Electricity, 1950, section 7.10 (from memory).
 * @example circleMutualH({ centre: [0, 0, 0], axis: [0, 0, 1], radiusM: 0.03 }, { centre: [0.08, 0, 0], axis: [0, 0, 1], radiusM: 0.025 }, 60)
 */
export function circleMutualH(first: Circle, second: Circle, points: number): number {
  const axis = unit(first.axis);
  const [u, v] = across(unit(second.axis));
  let sum = 0;
  for (let n = 0; n < points; n++) {
    const angle = (2 * Math.PI * n) / points;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const radial = plus(times(u, c), times(v, s));
    const along = plus(times(u, -s), times(v, c));
    const from = minus(plus(second.centre, times(radial, second.radiusM)), first.centre);
    const height = dot(from, axis);
    const outwards = minus(from, times(axis, height));
    const distance = lengthOf(outwards);
    if (distance === 0) continue;
    // The potential runs round the first axis: axis × outwards, at length 1.
    const round: Vector = [
      (axis[1] * outwards[2] - axis[2] * outwards[1]) / distance,
      (axis[2] * outwards[0] - axis[0] * outwards[2]) / distance,
      (axis[0] * outwards[1] - axis[1] * outwards[0]) / distance,
    ];
    sum += potentialTmPerA(first.radiusM, distance, height) * dot(round, along);
  }
  return (sum * 2 * Math.PI * second.radiusM) / points;
}

/** Vector potential of a circle per ampere, T·m/A. */
function potentialTmPerA(ringM: number, radiusM: number, heightM: number): number {
  const m = (4 * ringM * radiusM) / ((ringM + radiusM) ** 2 + heightM ** 2);
  const scale = (MU0 / Math.PI) * Math.sqrt(ringM / radiusM);
  // The brackets cancel where m is small; their series is (π/32) k³ (1 + 3m/4 + 75m²/128 + ...).
  if (m < 1e-3) return scale * (Math.PI / 32) * m ** 1.5 * (1 + 0.75 * m + (75 / 128) * m * m);
  const { k, e } = ellipticIntegrals(m);
  return (scale / Math.sqrt(m)) * ((1 - m / 2) * k - e);
}

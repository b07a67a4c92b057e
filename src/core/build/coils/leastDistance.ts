import { findRoot } from '../../math/findRoot.ts';
import { sectionInductanceH } from '../winding/sectionInductance.ts';
import { outerRadiusM, type WindingSection } from '../winding/windingSection.ts';
import { couplingBetween } from './coupling.ts';

/** How two coils stand: one behind the other on one axis, or side by side with parallel axes. */
export type CoilStand = 'coaxial' | 'side-by-side';

/**
 * Coupling of up to 0.01 leaves slopes to −40 dB whole, up to 0.003 to −50 dB (derived: the leak is k of the other coil's voltage).
 * Turned so that one axis lies in the other's middle plane two coils do not couple at any distance; the practice of "one diameter apart and at right
 * angles" (common practice, no source) has the same ground.
 */
export const COUPLING_ALLOWED = { to40Db: 0.01, to50Db: 0.003 } as const;

const FARTHEST_DIAMETERS = 50;

/**
 * Least distance of the middles of two air-core coils at which they couple no more than `coupling` (a size, 0 to 1), m.
 *
 * From the touching windings outwards; returns the touching distance where that already does. Coils at an angle in one plane couple
 * less than parallel ones; a tilt of θ from the right angle brings sin θ of the parallel value back.
 * @example leastDistanceM(section, section, 'side-by-side', 0.01) // 1.55 outer diameters
 */
export function leastDistanceM(
  first: WindingSection,
  second: WindingSection,
  stand: CoilStand,
  coupling: number,
): number {
  const touching =
    stand === 'coaxial' ? (first.lengthM + second.lengthM) / 2 : outerRadiusM(first) + outerRadiusM(second);
  const [firstHenry, secondHenry] = [sectionInductanceH(first), sectionInductanceH(second)];
  const excess = (logDistance: number): number => {
    const away = Math.exp(logDistance);
    const found = couplingBetween(
      { section: first, centre: [0, 0, 0], axis: [0, 0, 1] },
      { section: second, centre: stand === 'coaxial' ? [0, 0, away] : [away, 0, 0], axis: [0, 0, 1] },
      firstHenry,
      secondHenry,
    );
    return Math.log(Math.abs(found) / coupling);
  };
  const farthest = FARTHEST_DIAMETERS * 2 * Math.max(outerRadiusM(first), outerRadiusM(second));
  if (excess(Math.log(touching)) <= 0) return touching;
  if (excess(Math.log(farthest)) > 0) return farthest;
  return Math.exp(findRoot(excess, Math.log(touching), Math.log(farthest), 1e-6).x);
}

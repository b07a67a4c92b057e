import { besselJ1Zero } from '../../math/besselJ1Zero.ts';
import { findMinimum } from '../../math/findMinimum.ts';
import { findRoot } from '../../math/findRoot.ts';
import { pistonDirectivity } from './pistonDirectivity.ts';

/** Half power and half pressure, dB. */
export const HALF_POWER_DB = -10 * Math.log10(2);
export const HALF_PRESSURE_DB = -20 * Math.log10(2);

/**
 * x = ka sin θ at which a piston's main lobe has fallen to a level, dB re its axis (below 0): the root of 20 lg(2 J1(x)/x) = level.
 *
 * To 1e-14. Throws a RangeError at 0 dB and above. Source: as `pistonDirectivity`.
 *
 * Example: pistonBeamArgument(-3.0102999566) = 1.61633995
 */
export const pistonBeamArgument = (levelDb: number): number => {
  if (!(levelDb < 0)) throw new RangeError(`the main lobe never reaches ${levelDb} dB off axis`);
  const ratio = 10 ** (levelDb / 20);
  return findRoot((x) => pistonDirectivity(x) - ratio, 0, besselJ1Zero(1), 1e-15).x;
};

/** Angle off axis that belongs to an argument x = ka sin θ, radians; null where the lobe is wider than the half space. */
export const beamAngleRad = (argument: number, ka: number): number | null =>
  argument <= ka ? Math.asin(argument / ka) : null;

/** Angle at which the main lobe of a piston of given ka has fallen to a level, radians; null if it never does. */
export const pistonBeamAngleRad = (levelDb: number, ka: number): number | null =>
  beamAngleRad(pistonBeamArgument(levelDb), ka);

/** Angle of the first null, radians: ka sin θ = 3.8317; null below that ka. */
export const pistonFirstNullRad = (ka: number): number | null => beamAngleRad(besselJ1Zero(1), ka);

/** The first side lobe at its strongest, relative to the axis, negative: −0.1323 (−17.57 dB) at x = 5.1356. */
export const pistonFirstSideLobe = (): number =>
  findMinimum(pistonDirectivity, besselJ1Zero(1), besselJ1Zero(2), 1e-8).value;

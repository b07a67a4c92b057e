import type { CurveTable } from '../curveTable.ts';
import { delayPhaseRad, propagationDelayS } from '../propagationDelay.ts';

/** Change of level by `gainDb`. Example: changeLevel(curve, -6.02) halves the magnitudes. */
export const changeLevel = (curve: CurveTable, gainDb: number): CurveTable => ({
  ...curve,
  magnitudes: curve.magnitudes.map((magnitude) => magnitude * 10 ** (gainDb / 20)),
});

/**
 * A response carried from one distance to another in the far field: 1/r from the acoustic centre, and the delay of the way.
 *
 * `centreDepthM`: the acoustic centre behind the point that distances are told from, positive away from the microphone. Holds beyond
 * about three times the source's largest size (from memory). Throws a RangeError where a distance from the centre is not above 0.
 * Example: from 0.5 to 1 m with depth 0 the level falls by 6.02 dB.
 */
export function moveDistance(
  curve: CurveTable,
  fromM: number,
  toM: number,
  soundSpeedMPerS: number,
  centreDepthM = 0,
): CurveTable {
  const [near, far] = [fromM + centreDepthM, toM + centreDepthM];
  if (!(near > 0 && far > 0)) throw new RangeError('Distances from the acoustic centre are above 0.');
  const delayS = propagationDelayS(far - near, soundSpeedMPerS);
  return {
    frequenciesHz: curve.frequenciesHz,
    magnitudes: curve.magnitudes.map((magnitude) => (magnitude * near) / far),
    phasesRad: curve.phasesRad.map((phase, i) => phase + delayPhaseRad(curve.frequenciesHz[i]!, delayS)),
  };
}

/**
 * The acoustic centre from magnitudes at two distances: its depth behind the point that these are told from, m, by
 * d = (r1 p1 − r2 p2)/(p2 − p1). Throws a RangeError unless the nearer level is the greater. Derived from p (r + d) = constant.
 * Example: 1 at 1 m and 0.55 at 2 m: 0.222 m
 */
export function acousticCentreDepthM(
  near: { readonly distanceM: number; readonly magnitude: number },
  far: { readonly distanceM: number; readonly magnitude: number },
): number {
  if (!(near.distanceM < far.distanceM && near.magnitude > far.magnitude))
    throw new RangeError('A far microphone hears less than a near one.');
  return (far.distanceM * far.magnitude - near.distanceM * near.magnitude) / (near.magnitude - far.magnitude);
}

/** What the reflection from a rigid floor does to one source and one listener. */
export interface FloorBounce {
  readonly directM: number;
  readonly reflectedM: number;
  readonly pathDifferenceM: number;
  readonly delayS: number;
  /** First cancellation: the detour is half a wavelength, Hz. */
  readonly firstNullHz: number;
  /** Sum over direct sound there, 0 to 1: 1 − r1/r2. */
  readonly nullRatio: number;
}

/**
 * First floor reflection by the mirror source: heights of source and listener above the floor and their horizontal distance, m.
 *
 * Rigid floor, source without directivity. Source: image method, H. Kuttruff, Room Acoustics, chapter 4 (from memory).
 *
 * Example: 0.9 m and 1.1 m high, 2.5 m apart: first null at 247 Hz
 */
export const floorBounce = (
  sourceHeightM: number,
  listenerHeightM: number,
  distanceM: number,
  soundSpeedMPerS: number,
): FloorBounce => {
  const directM = Math.hypot(distanceM, listenerHeightM - sourceHeightM);
  const reflectedM = Math.hypot(distanceM, listenerHeightM + sourceHeightM);
  const pathDifferenceM = reflectedM - directM;
  return {
    directM,
    reflectedM,
    pathDifferenceM,
    delayS: pathDifferenceM / soundSpeedMPerS,
    firstNullHz: soundSpeedMPerS / (2 * pathDifferenceM),
    nullRatio: 1 - directM / reflectedM,
  };
};

/** What a measurement that is cut off before the first reflection can show. */
export interface Gate {
  readonly timeS: number;
  /** 1/time: nothing below is resolved, and no detail finer than this, whatever the transform's length. */
  readonly lowestHz: number;
  readonly resolutionHz: number;
}

/**
 * Time between the direct sound and the reflection from the floor, source and microphone at the same height.
 *
 * Lengths in metres, c in m/s. A tapered window costs a factor of 1.5 to 2 more (from memory).
 * Source: C. J. Struck and S. F. Temme, Simulated Free Field Measurements, J. Audio Eng. Soc. 42 (1994) 467; here plain geometry.
 * Example: `reflectionFreeGate(1.2, 1, 343.2).lowestHz` is 214.5.
 */
export function reflectionFreeGate(heightM: number, distanceM: number, soundSpeedMPerS: number): Gate {
  const timeS = (2 * Math.hypot(distanceM / 2, heightM) - distanceM) / soundSpeedMPerS;
  return { timeS, lowestHz: 1 / timeS, resolutionHz: 1 / timeS };
}

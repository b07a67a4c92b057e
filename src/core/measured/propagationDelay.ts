/** Time in seconds that sound takes over a distance. Example: `propagationDelayS(0.034, 343.2)` is 99.07e-6. */
export const propagationDelayS = (distanceM: number, soundSpeedMPerS: number): number => distanceM / soundSpeedMPerS;

/** Phase in radians of a pure delay under exp(+jωt): -2πfτ, not wrapped. */
export const delayPhaseRad = (frequencyHz: number, delayS: number): number => -2 * Math.PI * frequencyHz * delayS;

/** Amplitude response of a sealed box, fixed by its Qtc alone; frequencies in units of fc. */
export interface SealedResponse {
  readonly f3OverFc: number;
  /** Highest amplitude over the pass band, 1 where there is no peak. */
  readonly peakRatio: number;
  /** null where there is no peak. */
  readonly peakOverFc: number | null;
  /** Amplitude at fc over the pass band: Qtc itself. */
  readonly gainAtFc: number;
}

/**
 * −3 dB point and peak of the second-order high-pass G = s²/(s² + s/Qtc + 1) that a sealed box is.
 *
 * a = 1/Qtc² − 2, f3/fc = √((a + √(a² + 4))/2); above Qtc = 0.7071 a peak Qtc²/√(Qtc² − ¼) at fc/√(1 − 1/(2 Qtc²)). Half-power point.
 * Assumes a rigid, tight box without filling and no coil inductance.
 * Source: R. H. Small, "Closed-Box Loudspeaker Systems", J. Audio Eng. Soc. 20, 1972, 798.
 *
 * Example: sealedResponse(1) = { f3OverFc: 0.786, peakRatio: 1.155 (1.25 dB), peakOverFc: 1.414, gainAtFc: 1 }
 */
export const sealedResponse = (qtc: number): SealedResponse => {
  const inverse = 1 / (qtc * qtc);
  const a = inverse - 2;
  const f3OverFc = Math.sqrt((a + Math.hypot(a, 2)) / 2);
  const peaks = inverse < 2;
  return {
    f3OverFc,
    peakRatio: peaks ? qtc ** 2 / Math.sqrt(qtc ** 2 - 0.25) : 1,
    peakOverFc: peaks ? 1 / Math.sqrt(1 - inverse / 2) : null,
    gainAtFc: qtc,
  };
};

/** The two frequencies at which a vented box's impedance peaks, Hz. */
export interface ImpedancePeaks {
  readonly lowerHz: number;
  readonly upperHz: number;
}

/**
 * Twin impedance peaks of a lossless vented box: fL² + fH² = fs²(1 + α) + fB², fL fH = fs fB (fs in the box, with its air load).
 *
 * With a leak QL = 7 the peaks stay within about 1 %. Source: R. H. Small, "Vented-Box Loudspeaker Systems", 1973, part III.
 *
 * Example: fs 30 Hz, fB 32 Hz, α 1.5: 17.6 and 54.4 Hz
 */
export const ventedImpedancePeaks = (fsHz: number, tuningHz: number, alpha: number): ImpedancePeaks => {
  const sum = fsHz ** 2 * (1 + alpha) + tuningHz ** 2;
  const product = fsHz * tuningHz;
  // (fH ± fL)² = sum ± 2 product
  const together = Math.sqrt(sum + 2 * product);
  const upperHz = (together + Math.sqrt(sum - 2 * product)) / 2;
  return { lowerHz: product / upperHz, upperHz };
};

/** Back again: α from the peaks and the tuning. */
export const alphaFromPeaks = ({ lowerHz, upperHz }: ImpedancePeaks, tuningHz: number): number =>
  ((upperHz ** 2 - tuningHz ** 2) * (tuningHz ** 2 - lowerHz ** 2)) / (upperHz * lowerHz) ** 2;

/** Back again: the driver's resonance in the box from the peaks and the tuning, Hz. */
export const resonanceFromPeaksHz = ({ lowerHz, upperHz }: ImpedancePeaks, tuningHz: number): number =>
  (lowerHz * upperHz) / tuningHz;

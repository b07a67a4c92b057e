/**
 * Least port section for quiet running at full stroke, m²: S >= 0.8 fB VD (fB Hz, VD peak volume displacement of the cones m³).
 *
 * Holds the peak air speed near 5 % of the speed of sound at the tuning for full cone stroke. Guidance, not a limit.
 * Source: R. H. Small, "Vented-Box Loudspeaker Systems", J. Audio Eng. Soc. 21, 1973, part IV (from memory).
 *
 * Example: leastPortAreaM2(30, 180e-6) = 0.00432
 */
export const leastPortAreaM2 = (tuningHz: number, displacementM3: number): number => 0.8 * tuningHz * displacementM3;

/** The same as a diameter of one round port, m: d >= √(fB VD) (fB Hz, VD m³, d m). Source as `leastPortAreaM2`. */
export const leastPortDiameterM = (tuningHz: number, displacementM3: number): number =>
  Math.sqrt(tuningHz * displacementM3);

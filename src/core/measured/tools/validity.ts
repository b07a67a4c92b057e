/** Where a near-field measurement holds and why not further. */
export interface NearFieldLimits {
  /** ka = 1 of the source: −0.4 dB there. */
  readonly sourceHz: number;
  /** The cabinet's largest side is a third of the wavelength: errors grow above about 1 dB, the baffle step apart. */
  readonly cabinetHz: number;
  readonly highestHz: number;
}

/**
 * Upper frequency of a near-field measurement: the lower of c/(2πa) and c/(3L), a the source's radius, L the cabinet's largest side, m.
 *
 * Source: D. B. Keele, J. Audio Eng. Soc. 22 (1974) 154 (ka = 1); C. J. Struck and S. F. Temme, J. Audio Eng. Soc. 42 (1994) 467 (a
 * third of the wavelength, from memory). With the baffle step put in, the first limit alone matters.
 * Example: nearFieldLimits(0.1, 0.6, 343).sourceHz = 546
 */
export const nearFieldLimits = (radiusM: number, cabinetM: number, soundSpeedMPerS: number): NearFieldLimits => {
  const sourceHz = soundSpeedMPerS / (2 * Math.PI * radiusM);
  const cabinetHz = soundSpeedMPerS / (3 * cabinetM);
  return { sourceHz, cabinetHz, highestHz: Math.min(sourceHz, cabinetHz) };
};

/** Lowest frequency of a gated measurement: 1/T, twice that where the window tapers (from memory: 1.5 to 2 times). */
export const gateLowestHz = (gateS: number, tapered: boolean): number => (tapered ? 2 : 1) / gateS;

/** The octave in which near and far may be joined, or null where their ranges leave none: blend in its middle. */
export function joinBand(nearHighestHz: number, farLowestHz: number): readonly [number, number] | null {
  return nearHighestHz >= 2 * farLowestHz ? [farLowestHz, nearHighestHz] : null;
}

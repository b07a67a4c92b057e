/**
 * Level in dB of a rigid flat piston in an infinite baffle at the centre of its face, over that at a far distance on the
 * axis of the same half space, where it is small against the wavelength: 20 lg(2r/a).
 *
 * Radius and distance in metres. Within 0.05 dB up to ka = 0.37.
 * Source: D. B. Keele, Low-Frequency Loudspeaker Assessment by Nearfield Sound-Pressure Measurement, J. Audio Eng. Soc. 22 (1974) 154.
 * Example: `idealNearFieldLevelDb(0.1, 1)` is 26.02.
 */
export const idealNearFieldLevelDb = (radiusM: number, distanceM: number): number =>
  20 * Math.log10((2 * distanceM) / radiusM);

/**
 * The same with the microphone `microphoneM` before the face, exact on the axis near the piston: |p| = 2ρcu |sin(k(√(z²+a²) - z)/2)|
 * over the far field ρcu·ka²/(2r). All lengths in metres, c in m/s; far means r well beyond a²/λ.
 *
 * Source: exact axial field of the piston, from memory; the ratio derived.
 * Example: `nearFieldLevelDb(0.1, 1, 0.005, 200, 343.2)` is 25.54.
 */
export function nearFieldLevelDb(
  radiusM: number,
  distanceM: number,
  microphoneM: number,
  frequencyHz: number,
  soundSpeedMPerS: number,
): number {
  const k = (2 * Math.PI * frequencyHz) / soundSpeedMPerS;
  const near = 2 * Math.abs(Math.sin((k * (Math.hypot(microphoneM, radiusM) - microphoneM)) / 2));
  return 20 * Math.log10((near * 2 * distanceM) / (k * radiusM ** 2));
}

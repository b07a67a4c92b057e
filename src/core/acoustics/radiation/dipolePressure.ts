import type { AirProperties } from '../airProperties.ts';

/**
 * Pressure of a dipole far away at low frequencies, in the sense (rms or peak) of U, Pa: ω ρ U k D cos θ/(4π r).
 *
 * `lengthM` D by `dipoleLengthM`; full space. Holds while k D is small (5 % at k D = 1.1) and r is far above D.
 * Source: textbook dipole, e.g. L. L. Beranek, Acoustics, 1954, section 4.4 (from memory).
 *
 * Example: 5 l/s rms at 60 Hz, D 0.318 m, 1 m: 0.0632 Pa rms
 */
export const dipolePressurePa = (
  volumeVelocityM3PerS: number,
  frequencyHz: number,
  lengthM: number,
  at: { readonly distanceM: number; readonly offAxisRad: number },
  air: AirProperties,
): number => {
  const monopole = fullSpacePressurePa(volumeVelocityM3PerS, frequencyHz, at.distanceM, air.densityKgPerM3);
  return ((monopole * 2 * Math.PI * frequencyHz) / air.soundSpeedMPerS) * lengthM * Math.cos(at.offAxisRad);
};

/** Pressure of a point source in full space, Pa: ω ρ U/(4π r). */
export const fullSpacePressurePa = (
  volumeVelocityM3PerS: number,
  frequencyHz: number,
  distanceM: number,
  densityKgPerM3: number,
): number => (frequencyHz * densityKgPerM3 * volumeVelocityM3PerS) / (2 * distanceM);

/**
 * Two opposite point sources D apart on their axis, re one of them: 2 |sin(kD/2)|, far away.
 *
 * The simplest picture of a panel; above a third of its peak frequency `dipoleFactorInto` is the better one (a disc's true peak is 8 dB
 * higher, since the panel also keeps the front's sound in front).
 */
export const twoSourceRatio = (frequencyHz: number, lengthM: number, soundSpeedMPerS: number): number =>
  2 * Math.abs(Math.sin((Math.PI * frequencyHz * lengthM) / soundSpeedMPerS));

/** Where the two-source picture equals one source (c/(6D)), peaks (c/(2D)) and has its first null (c/D), Hz. */
export const twoSourceFrequenciesHz = (
  lengthM: number,
  soundSpeedMPerS: number,
): { readonly equalHz: number; readonly peakHz: number; readonly nullHz: number } => ({
  equalHz: soundSpeedMPerS / (6 * lengthM),
  peakHz: soundSpeedMPerS / (2 * lengthM),
  nullHz: soundSpeedMPerS / lengthM,
});

import { helmholtzNeckM } from './helmholtz.ts';

/** Area of a circle from its diameter, m² from m. */
export const discAreaM2 = (diameterM: number): number => (Math.PI / 4) * diameterM ** 2;

/** Area of a circle from its radius, m² from m. */
export const circleAreaM2 = (radiusM: number): number => Math.PI * radiusM ** 2;

/** Radius of the circle that has an area, m from m². */
export const equivalentRadiusM = (areaM2: number): number => Math.sqrt(areaM2 / Math.PI);

/** Length of a neck with given end corrections in radii of the circle of its area, m. */
export const neckLengthM = (areaM2: number, lengthM: number, endRadii: readonly number[]): number =>
  endRadii.reduce((sum, radii) => sum + radii * equivalentRadiusM(areaM2), lengthM);

/**
 * Round ports by the handbook form: effective length c² S/(4π² fB² V) and actual length, both ends together taken as k diameters, m.
 *
 * k = 0.732 for one flanged (0.85 r) and one free end (0.614 r), 0.85 for two flanged, 0.614 for two free ends. The length may come
 * out negative: then the port is too wide (`portLengthForTuning` makes a Problem of it). Source: common handbook form, as
 * `handbookCentimetreConstant`.
 *
 * Example: 50 L, 35 Hz, one port of 100 mm, k 0.732: 0.309 m
 */
export const roundPortLength = (
  port: {
    readonly volumeM3: number;
    readonly tuningHz: number;
    readonly diameterM: number;
    readonly count: number;
    readonly endDiameters: number;
  },
  soundSpeedMPerS: number,
): { readonly effectiveLengthM: number; readonly lengthM: number } => {
  const { volumeM3, tuningHz, diameterM, count, endDiameters } = port;
  const areaM2 = count * discAreaM2(diameterM);
  const effectiveLengthM = helmholtzNeckM({ areaM2, tuningHz, volumeM3 }, soundSpeedMPerS);
  return { effectiveLengthM, lengthM: effectiveLengthM - endDiameters * diameterM };
};

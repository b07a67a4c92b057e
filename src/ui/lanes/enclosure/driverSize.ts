import type { Driver } from '../../../core/document/schema.ts';

/** Drawn where a speaker's driver is missing. */
const UNKNOWN_RADIUS_M = 0.05;

/** Radii of a driver as drawn: of its frame, and of what moves (from the cone area; four fifths of the frame without one). */
export function driverSize(driver: Driver | null): { readonly radiusM: number; readonly movingRadiusM: number } {
  const radiusM = driver ? driver.outerDiameterM / 2 : UNKNOWN_RADIUS_M;
  const sdM2 = driver?.entered.sdM2;
  return { radiusM, movingRadiusM: sdM2 ? Math.min(radiusM * 0.93, Math.sqrt(sdM2 / Math.PI)) : radiusM * 0.8 };
}

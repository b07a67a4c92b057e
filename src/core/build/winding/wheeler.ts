import type { WindingSection } from './windingSection.ts';

const INCH_M = 0.0254;

/** A single layer of turns: radius to the middle of the wire and length, m. */
export interface Solenoid {
  readonly radiusM: number;
  readonly lengthM: number;
  readonly turns: number;
}

/**
 * Inductance of a single-layer coil by Wheeler's formula, H: r² N²/(9 r + 10 l) in inches and µH.
 *
 * Within 1 % for a length above 0.8 radii. Source: H. A. Wheeler, "Simple Inductance Formulas for Radio Coils", 1928, Proc. IRE 16, 1398.
 * @example wheelerSolenoidH({ radiusM: 0.0127, lengthM: 0.0254, turns: 50 }) // 43.1e-6
 */
export const wheelerSolenoidH = ({ radiusM, lengthM, turns }: Solenoid): number =>
  (1e-6 * radiusM ** 2 * turns ** 2) / (INCH_M * (9 * radiusM + 10 * lengthM));

/**
 * Inductance of a multilayer coil by Wheeler's formula, H: 0.8 a² N²/(6 a + 9 b + 10 c) in inches and µH, with a the mean radius, b the length and c the
 * depth of the winding.
 *
 * About 1 % where the three terms are about equal. Source: as `wheelerSolenoidH`.
 * @example wheelerMultilayerH({ meanRadiusM: 0.02, lengthM: 0.02, depthM: 0.016, turns: 250 }) // 1.712e-3
 */
export const wheelerMultilayerH = ({ meanRadiusM, lengthM, depthM, turns }: WindingSection): number =>
  (0.8e-6 * meanRadiusM ** 2 * turns ** 2) / (INCH_M * (6 * meanRadiusM + 9 * lengthM + 10 * depthM));

/** Error of an estimate against the exact inductance, a ratio: above 0 where the estimate is high. */
export const estimateError = (estimateH: number, exactH: number): number => estimateH / exactH - 1;

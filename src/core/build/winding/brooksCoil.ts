import { MU0 } from '../coils/vacuum.ts';
import type { WindingSection } from './windingSection.ts';

/** Inductance over mean radius and turns squared, H/m: 1.6994 µH/m in Grover's tables, 1.699378 by `sectionInductanceH`. */
const PER_MEAN_RADIUS = 1.699378e-6;
const MEAN_RADIUS = 1.5;

/**
 * The coil of most inductance for its wire: a square winding of side `sideM` (m) on a bore as wide as two sides.
 *
 * Source: H. B. Brooks, "Design of Standards of Inductance", 1931, BS J. Res. 7, 289.
 * @example brooksSection(0.012, 200)
 */
export const brooksSection = (sideM: number, turns: number): WindingSection => ({
  meanRadiusM: MEAN_RADIUS * sideM,
  lengthM: sideM,
  depthM: sideM,
  turns,
});

/**
 * Inductance of such a coil, H.
 * @example brooksInductanceH(0.012, 200) // 1.2236e-3
 */
export const brooksInductanceH = (sideM: number, turns: number): number =>
  PER_MEAN_RADIUS * MEAN_RADIUS * sideM * turns ** 2;

/**
 * Turns (a real number) and side of such a coil for an inductance in H, each turn taking a square of `pitchM` (m):
 * N = (L/(2.0285 μ0 d))^(2/5), c = d √N.
 * @example brooksFor(1.5e-3, 1.25e-3).turns // 185.8
 */
export function brooksFor(henry: number, pitchM: number): WindingSection {
  const perSide = PER_MEAN_RADIUS * MEAN_RADIUS;
  const turns = (henry / (perSide * pitchM)) ** 0.4;
  return brooksSection(pitchM * Math.sqrt(turns), turns);
}

/** Inductance over μ0, side and turns squared of a section, 1: 2.0285 for the Brooks shape. */
export const inductanceFactor = (henry: number, { lengthM, turns }: WindingSection): number =>
  henry / (MU0 * lengthM * turns ** 2);

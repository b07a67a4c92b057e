import type { Complex } from '../../math/complex.ts';
import type { Position } from '../baffle/boxEdges.ts';

export interface PointSource {
  readonly at: Position;
  /** Pressure times distance that it makes alone, in whatever unit the sum is wanted; its phase in radians (0 when left out). */
  readonly amplitude: number;
  readonly phaseRad?: number;
}

/** Straight distance between two points, m. */
export const pathLengthM = (from: Position, to: Position): number =>
  Math.hypot(to.xM - from.xM, to.yM - from.yM, to.zM - from.zM);

/**
 * Pressure of several point sources at one point, exact path lengths: p = Σ A exp(jφ − jkr)/r.
 *
 * Free field (or half space with the doubling in A), no shadows. k in rad/m, lengths in m.
 *
 * Example: one source of amplitude 1 at 2 m: |p| = 0.5
 */
export const pointSourceSum = (
  sources: readonly PointSource[],
  observer: Position,
  wavenumberPerM: number,
): Complex => {
  let re = 0;
  let im = 0;
  for (const { at, amplitude, phaseRad = 0 } of sources) {
    const distanceM = pathLengthM(at, observer);
    const angle = phaseRad - wavenumberPerM * distanceM;
    re += (amplitude / distanceM) * Math.cos(angle);
    im += (amplitude / distanceM) * Math.sin(angle);
  }
  return { re, im };
};

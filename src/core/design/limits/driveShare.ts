import type { LimitedCurve } from './limitInput.ts';

/** How much of the drive that brings a curve to its limit is in use, at one point of the sweep: 1 at the limit, 0 at rest. */
export function driveShare({ values, limit, growsWith }: LimitedCurve, at: number): number {
  const share = values[at]! / limit;
  return growsWith === 'square' ? Math.sqrt(share) : share;
}

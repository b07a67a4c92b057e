import { volumeOf } from './convexSolid.ts';
import type { HalfSpace } from './halfSpace.ts';

/** Volume of what at least one of several convex solids holds, m³, by inclusion and exclusion: for a handful of solids. */
export function unionVolume(solids: readonly (readonly HalfSpace[])[]): number {
  const [first, ...rest] = solids;
  if (first === undefined) return 0;
  const own = volumeOf(first);
  if (own === 0) return unionVolume(rest);
  return own + unionVolume(rest) - unionVolume(rest.map((other) => [...first, ...other]));
}

import type { Radiation } from './model.ts';

/**
 * A point source into half space at a given distance: no directivity, no edges.
 * @example pointSource(1)
 */
export const pointSource = (distanceM: number): Radiation => ({
  distanceM,
  pistonRadiusM: 0,
  offAxisDeg: 0,
  edges: null,
});

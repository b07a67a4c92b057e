import { gaussLegendre } from '../../math/gaussLegendre.ts';
import {
  angleFromFace,
  type BoxEdge,
  bounds,
  distanceBetween,
  distanceFromEdge,
  isHidden,
  pointOnEdge,
  type Triple,
} from './boxEdges.ts';
import { addToLumps, type LumpedPaths } from './lumpedPaths.ts';
import { EDGE_FACTOR, wedgeKernel, wedgeTerms } from './wedgeKernel.ts';

const POINTS = 4;
/** Nearer than this to a face's plane the kernel is taken as at this angle: few points cannot follow its peak. */
const LEAST_ANGLE_FROM_PLANE = 0.35;

const awayFromPlane = (angle: number): number => {
  const turned = angle - Math.PI;
  if (Math.abs(turned) >= LEAST_ANGLE_FROM_PLANE) return angle;
  return Math.PI + (turned < 0 ? -LEAST_ANGLE_FROM_PLANE : LEAST_ANGLE_FROM_PLANE);
};

/**
 * Adds the detours source → a given edge of the front → across the front or a side → a second edge → listener.
 *
 * Each further edge multiplies by ½ (−ν/4π) exp(−jkm)/m · B dz; the ½ because a wave along a face is counted with its image.
 * Source: A. Asheim, U. P. Svensson, "An integral equation formulation for the diffraction from convex plates and polyhedra",
 * J. Acoust. Soc. Am. 133, 2013, 3681 (structure from memory, verified against boundary elements).
 */
export const addSecondOrderTaps = (
  lumps: LumpedPaths,
  edges: readonly BoxEdge[],
  first: BoxEdge,
  source: Triple,
  listener: Triple,
): void => {
  const { nodes, weights } = gaussLegendre(POINTS);
  const straight = distanceBetween(source, listener);
  const [zS, rS] = [source[first.along], distanceFromEdge(first, source)];
  const halfP = (first.to - first.from) / 2;
  for (const face of first.faces) {
    const firstTerms = wedgeTerms(face.axis === 2 ? 0 : 1.5 * Math.PI);
    for (const second of edges) {
      if (second === first || !bounds(second, face)) continue;
      const angle = angleFromFace(second, face, listener);
      if (isHidden(angle)) continue;
      const secondTerms = wedgeTerms(awayFromPlane(angle));
      const [zR, rR] = [listener[second.along], distanceFromEdge(second, listener)];
      const halfQ = (second.to - second.from) / 2;
      const scale = -0.5 * EDGE_FACTOR * EDGE_FACTOR * straight * halfP * halfQ;
      for (let i = 0; i < POINTS; i++) {
        const zp = first.from + halfP * (1 + nodes[i]!);
        const p = pointOnEdge(first, zp);
        const m = distanceBetween(source, p);
        const rP = distanceFromEdge(second, p);
        for (let k = 0; k < POINTS; k++) {
          const zq = second.from + halfQ * (1 + nodes[k]!);
          const q = pointOnEdge(second, zq);
          const acrossM = distanceBetween(p, q);
          const l = distanceBetween(q, listener);
          const leaving = (m * acrossM + (zp - zS) * (zp - q[first.along])) / (rS * distanceFromEdge(first, q));
          const arriving = (acrossM * l + (zq - p[second.along]) * (zq - zR)) / (rP * rR);
          const strength = wedgeKernel(firstTerms, leaving) * wedgeKernel(secondTerms, arriving);
          const weight = (scale * weights[i]! * weights[k]! * strength) / (m * acrossM * l);
          addToLumps(lumps, m + acrossM + l - straight, weight, acrossM);
        }
      }
    }
  }
};

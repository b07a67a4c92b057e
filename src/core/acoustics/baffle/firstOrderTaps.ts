import { gaussLegendre } from '../../math/gaussLegendre.ts';
import {
  angleFromFace,
  type BoxEdge,
  distanceBetween,
  distanceFromEdge,
  FRONT,
  isHidden,
  pointOnEdge,
  type Triple,
} from './boxEdges.ts';
import { addTap, type PathTaps } from './pathTaps.ts';
import { EDGE_FACTOR, wedgeKernel, wedgeTerms } from './wedgeKernel.ts';

const POINTS_PER_PIECE = 5;
/** Least angle from the baffle's plane for the spacing of points: nearer, the peak is narrower than they can resolve. */
const NARROWEST = 0.02;

/**
 * Adds the detours source → one edge of the front → listener, with weights in units of the free field.
 *
 * Gauss points on z = apex + h sinh t to both sides of the shortest detour: the kernel peaks there, and the more narrowly the
 * nearer the listener is to the plane of the baffle. An edge that the box hides from the listener gives none.
 */
export const addFirstOrderTaps = (taps: PathTaps, edge: BoxEdge, source: Triple, listener: Triple): void => {
  const angle = angleFromFace(edge, FRONT, listener);
  if (isHidden(angle)) return;
  const straight = distanceBetween(source, listener);
  const [zS, rS] = [source[edge.along], distanceFromEdge(edge, source)];
  const [zR, rR] = [listener[edge.along], distanceFromEdge(edge, listener)];
  const apex = (zS * rR + zR * rS) / (rS + rR);
  const h = ((rS * rR) / (rS + rR)) * Math.min(Math.max(Math.abs(angle - Math.PI), NARROWEST), 1);
  const terms = wedgeTerms(angle);
  const inside = apex > edge.from && apex < edge.to;
  const cuts = inside ? [edge.from, apex, edge.to] : [edge.from, edge.to];
  const rule = gaussLegendre(inside ? POINTS_PER_PIECE : 2 * POINTS_PER_PIECE);
  for (let piece = 1; piece < cuts.length; piece++) {
    const start = Math.asinh((cuts[piece - 1]! - apex) / h);
    const half = (Math.asinh((cuts[piece]! - apex) / h) - start) / 2;
    for (let i = 0; i < rule.nodes.length; i++) {
      const t = start + half * (1 + rule.nodes[i]!);
      const z = apex + h * Math.sinh(t);
      const dz = half * rule.weights[i]! * h * Math.cosh(t);
      const point = pointOnEdge(edge, z);
      const m = distanceBetween(source, point);
      const l = distanceBetween(point, listener);
      const strength = wedgeKernel(terms, (m * l + (z - zS) * (z - zR)) / (rS * rR));
      const lengthening = Math.abs((z - zS) / m + (z - zR) / l);
      const weight = (EDGE_FACTOR * strength * straight * dz) / (m * l);
      addTap(taps, m + l - straight, weight, lengthening * dz);
    }
  }
};

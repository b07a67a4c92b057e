import { depthOf, type HalfSpace, tightest } from './halfSpace.ts';
import { along, cross, dot, sizeOf, type Vector } from './vector.ts';

export interface Face {
  readonly plane: HalfSpace;
  /** Anticlockwise seen from outside. */
  readonly corners: readonly Vector[];
}

/** Larger than any cabinet: the square that a face is clipped out of. */
const REACH_M = 64;

/** Two directions in the plane that make a right-handed frame with its normal. */
const framesOf = (normal: Vector): readonly [Vector, Vector] => {
  const [x, y, z] = normal.map(Math.abs) as [number, number, number];
  const start: Vector = x <= y && x <= z ? [1, 0, 0] : y <= z ? [0, 1, 0] : [0, 0, 1];
  const first = cross(start, normal);
  const size = sizeOf(first);
  const one: Vector = [first[0] / size, first[1] / size, first[2] / size];
  return [one, cross(normal, one)];
};

function clip(corners: readonly Vector[], space: HalfSpace): Vector[] {
  const kept: Vector[] = [];
  corners.forEach((here, i) => {
    const next = corners[(i + 1) % corners.length]!;
    const [a, b] = [depthOf(space, here), depthOf(space, next)];
    if (a >= 0) kept.push(here);
    if (a >= 0 !== b >= 0)
      kept.push(along(here, [next[0] - here[0], next[1] - here[1], next[2] - here[2]], a / (a - b)));
  });
  return kept;
}

/** What a plane cuts out of a convex solid, as a polygon; empty where it misses. */
export function sectionOf(plane: HalfSpace, spaces: readonly HalfSpace[]): readonly Vector[] {
  const [u, v] = framesOf(plane.normal);
  const centre = along([0, 0, 0], plane.normal, plane.offsetM);
  const corner = (a: number, b: number): Vector => along(along(centre, u, a * REACH_M), v, b * REACH_M);
  let corners: Vector[] = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
  for (const space of spaces) corners = clip(corners, space);
  return corners;
}

export const areaOf = (corners: readonly Vector[], normal: Vector): number => {
  let sum: Vector = [0, 0, 0];
  corners.forEach((here, i) => {
    sum = along(sum, cross(here, corners[(i + 1) % corners.length]!), 0.5);
  });
  return dot(sum, normal);
};

/** Faces of the solid that several half-spaces have in common; none where it is empty. */
export function facesOf(spaces: readonly HalfSpace[]): readonly Face[] {
  const planes = tightest(spaces);
  return planes.flatMap((plane) => {
    const others = planes.filter((other) => other !== plane);
    const corners = sectionOf(plane, others);
    return corners.length >= 3 ? [{ plane, corners }] : [];
  });
}

/**
 * Volume of a convex solid given by half-spaces, m³: a third of each face's area times its distance from the origin, summed
 * (the divergence theorem); 0 where nothing is common to all. Exact but for rounding, about 1e-13 of the cube of the size of the square.
 */
export const volumeOf = (spaces: readonly HalfSpace[]): number =>
  Math.max(
    0,
    facesOf(spaces).reduce((sum, { plane, corners }) => sum + (areaOf(corners, plane.normal) * plane.offsetM) / 3, 0),
  );

export const cornersOf = (spaces: readonly HalfSpace[]): readonly Vector[] =>
  facesOf(spaces).flatMap(({ corners }) => corners);

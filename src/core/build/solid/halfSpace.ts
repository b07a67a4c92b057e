import { dot, sizeOf, type Vector } from './vector.ts';

/** All points p with normal · p ≤ offsetM; the normal has length 1 and points outwards. */
export interface HalfSpace {
  readonly normal: Vector;
  readonly offsetM: number;
}

export const halfSpace = (normal: Vector, offset: number): HalfSpace => {
  const size = sizeOf(normal);
  return { normal: [normal[0] / size, normal[1] / size, normal[2] / size], offsetM: offset / size };
};

/** The same half-space with its face moved inwards (outwards where `byM` is negative). */
export const insetBy = ({ normal, offsetM }: HalfSpace, byM: number): HalfSpace => ({ normal, offsetM: offsetM - byM });

/** What lies beyond the face of a half-space. */
export const beyond = ({ normal: [x, y, z], offsetM }: HalfSpace): HalfSpace => ({
  normal: [-x, -y, -z],
  offsetM: -offsetM,
});

/** How deep a point lies under the face; negative outside. */
export const depthOf = ({ normal, offsetM }: HalfSpace, point: Vector): number => offsetM - dot(normal, point);

/** One half-space for each direction, the tightest: a face that is stated twice would be counted twice. */
export function tightest(spaces: readonly HalfSpace[]): HalfSpace[] {
  const kept: HalfSpace[] = [];
  for (const space of spaces) {
    const at = kept.findIndex(({ normal }) => dot(normal, space.normal) > 1 - 1e-12);
    if (at < 0) kept.push(space);
    else if (space.offsetM < kept[at]!.offsetM) kept[at] = space;
  }
  return kept;
}

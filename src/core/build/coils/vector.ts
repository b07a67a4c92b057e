/** A point or direction of the board or cabinet: m, or parts of 1. */
export type Vector = readonly [x: number, y: number, z: number];

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const plus = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: Vector, factor: number): Vector => [a[0] * factor, a[1] * factor, a[2] * factor];
export const lengthOf = (a: Vector): number => Math.hypot(...a);
export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** The direction at length 1. Throws a RangeError where there is none. */
export function unit(a: Vector): Vector {
  const length = lengthOf(a);
  if (!(length > 0)) throw new RangeError('a direction needs a length');
  return times(a, 1 / length);
}

/** Two directions at right angles to an axis of length 1 and to each other, right-handed with it. */
export function across(axis: Vector): readonly [Vector, Vector] {
  const aside: Vector = Math.abs(axis[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0];
  const first = unit(cross(axis, aside));
  return [first, cross(axis, first)];
}

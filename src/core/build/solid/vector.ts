/** A point or a direction: x to the listener's right, y up, z towards the listener, in m. */
export type Vector = readonly [x: number, y: number, z: number];

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
/** a + s b. */
export const along = (a: Vector, b: Vector, s: number): Vector => [a[0] + s * b[0], a[1] + s * b[1], a[2] + s * b[2]];
export const sizeOf = (a: Vector): number => Math.sqrt(dot(a, a));

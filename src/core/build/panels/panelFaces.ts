import { dot, type HalfSpace, sectionOf, type Vector } from '../solid/index.ts';
import type { PanelPoint } from './panel.ts';

export interface PanelFrame {
  readonly across: Vector;
  readonly up: Vector;
}
export interface PanelFaces {
  readonly outerFace: readonly PanelPoint[];
  readonly innerFace: readonly PanelPoint[];
  readonly acrossM: number;
  readonly upM: number;
  readonly shape: 'rectangle' | 'trapezoid';
  /** A point of space on the panel. */
  readonly toPanel: (point: Vector) => PanelPoint;
}

/** Corners from the lower left, anticlockwise in (across, up). */
function inOrder(points: readonly PanelPoint[]): readonly PanelPoint[] {
  const twiceArea = points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
  const turned = twiceArea < 0 ? [...points].reverse() : points;
  const start = turned.reduce((best, [x, y], i) => (x + y < turned[best]![0] + turned[best]![1] ? i : best), 0);
  return [...turned.slice(start), ...turned.slice(0, start)];
}

/** A right angle at every corner, to a hundredth of a millimetre on a metre. */
const isRectangle = (points: readonly PanelPoint[]): boolean =>
  points.length === 4 &&
  points.every(([x, y], i) => {
    const [[ax, ay], [bx, by]] = [points[(i + 3) % 4]!, points[(i + 1) % 4]!];
    const [u, v, w, z] = [ax - x, ay - y, bx - x, by - y];
    return Math.abs(u * w + v * z) <= 1e-5 * Math.hypot(u, v) * Math.hypot(w, z);
  });

/** Both faces of a board, as polygons in its own frame, and the smallest upright rectangle round them. */
export function panelFaces(
  outer: HalfSpace,
  inner: HalfSpace,
  spaces: readonly HalfSpace[],
  frame: PanelFrame,
): PanelFaces {
  const flat = (point: Vector): PanelPoint => [dot(point, frame.across), dot(point, frame.up)];
  const [outside, inside] = [outer, inner].map((plane) => sectionOf(plane, spaces).map(flat)) as [
    PanelPoint[],
    PanelPoint[],
  ];
  const all = [...outside, ...inside];
  const [x, y] = [Math.min(...all.map((p) => p[0])), Math.min(...all.map((p) => p[1]))];
  const shift = (p: PanelPoint): PanelPoint => [p[0] - x, p[1] - y];
  const outerFace = inOrder(outside.map(shift));
  return {
    outerFace,
    innerFace: inOrder(inside.map(shift)),
    acrossM: Math.max(...all.map((p) => p[0])) - x,
    upM: Math.max(...all.map((p) => p[1])) - y,
    shape: isRectangle(outerFace) ? 'rectangle' : 'trapezoid',
    toPanel: (point) => shift(flat(point)),
  };
}

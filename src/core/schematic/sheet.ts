import { partAcross, partLength, textHeight } from './metrics.ts';
import type { PlacedPart, Point, TextAnchor } from './plan.ts';

/**
 * The half-unit grid that wires run on. Points are numbered row by row; a wire is a set of steps from a point to the
 * next one at its right or below. Nodes are numbered from 1; 0 is nobody.
 */
export interface Sheet {
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
  /** Covered by a symbol or a text. */
  readonly solid: Uint8Array;
  /** Node of the pin at a point. */
  readonly pins: Int16Array;
  /** Node of the step from a point to the right. */
  readonly rightward: Int16Array;
  /** Node of the step from a point downwards. */
  readonly downward: Int16Array;
  /** How many pins each node has. */
  readonly pinCounts: Int16Array;
  /** Points of each node's pins, then of its wires, repeats among them. */
  readonly pointsOf: readonly number[][];
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What a symbol covers, without its leads; a wire may run along its sides, one unit off the axis. */
export function symbolBox({ centre, orientation }: PlacedPart): Box {
  const [across, along] = [partAcross / 2 - 0.5, partLength / 2 - 0.5];
  const [w, h] = orientation === 'horizontal' ? [along, across] : [across, along];
  return { left: centre.x - w, right: centre.x + w, top: centre.y - h, bottom: centre.y + h };
}

/** What a text covers. */
export function textBox({ x, y, align, width }: TextAnchor): Box {
  const left = align === 'start' ? x : align === 'end' ? x - width : x - width / 2;
  return { left, right: left + width, top: y - textHeight / 2, bottom: y + textHeight / 2 };
}

export function blankSheet(bounds: Box, nodeCount: number): Sheet {
  const columns = Math.round((bounds.right - bounds.left) * 2) + 1;
  const rows = Math.round((bounds.bottom - bounds.top) * 2) + 1;
  return {
    left: bounds.left,
    top: bounds.top,
    columns,
    rows,
    solid: new Uint8Array(columns * rows),
    pins: new Int16Array(columns * rows),
    rightward: new Int16Array(columns * rows),
    downward: new Int16Array(columns * rows),
    pinCounts: new Int16Array(nodeCount + 1),
    pointsOf: Array.from({ length: nodeCount + 1 }, () => []),
  };
}

export const indexOf = (sheet: Sheet, { x, y }: Point): number =>
  Math.round((y - sheet.top) * 2) * sheet.columns + Math.round((x - sheet.left) * 2);

export const pointOf = (sheet: Sheet, index: number): Point => ({
  x: sheet.left + (index % sheet.columns) / 2,
  y: sheet.top + Math.floor(index / sheet.columns) / 2,
});

/** Keeps wires out of a box, its edges included. */
export function cover(sheet: Sheet, box: Box): void {
  const from = Math.ceil((box.left - sheet.left) * 2);
  const to = Math.floor((box.right - sheet.left) * 2);
  for (let r = Math.ceil((box.top - sheet.top) * 2); r <= Math.floor((box.bottom - sheet.top) * 2); r++) {
    sheet.solid.fill(1, r * sheet.columns + from, r * sheet.columns + to + 1);
  }
}

export function addPin(sheet: Sheet, point: Point, node: number): void {
  const index = indexOf(sheet, point);
  sheet.pins[index] = node;
  sheet.pinCounts[node]! += 1;
  sheet.pointsOf[node]!.push(index);
}

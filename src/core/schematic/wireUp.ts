import type { Part } from '../circuit/part.ts';
import type { Layout } from './layOut.ts';
import type { Point, SchematicPlan } from './plan.ts';
import { routeNodes } from './routeNodes.ts';
import { addPin, type Box, blankSheet, cover, indexOf, pointOf, type Sheet, symbolBox, textBox } from './sheet.ts';
import { traceWires } from './traceWires.ts';
import { layWire, pruneWires } from './wiring.ts';

/** Free space around what is drawn, for wires that have to go round. */
const rim = 4;

/** Lays a layout's wires, joins what they leave apart, and moves the whole to the origin; null where a wire finds no way. */
export function wireUp(parts: readonly Part[], layout: Layout): SchematicPlan | null {
  const { draft } = layout;
  const names = [...new Set(parts.flatMap((part) => part.nodes))];
  const numbers = new Map(names.map((name, k) => [name, k + 1]));
  const boxes = draft.parts.flatMap((part) => [symbolBox(part), textBox(part.valueAnchor), textBox(part.nameAnchor)]);
  const lines = [...draft.parts.map((part) => part.pins), ...draft.strokes.map((stroke) => stroke.points)];
  const sheet = blankSheet(boundsOf(boxes, lines, rim), names.length);
  for (const box of boxes) cover(sheet, box);
  draft.parts.forEach(({ pins }, placed) => {
    const { nodes } = parts[draft.edges[placed]!]!;
    pins.forEach((pin, k) => {
      addPin(sheet, pin, numbers.get(nodes[k]!)!);
    });
  });
  for (const { node, points } of draft.strokes) layWire(sheet, numbers.get(node)!, pathThrough(sheet, points));
  pruneWires(sheet);
  if (!routeNodes(sheet)) return null;
  pruneWires(sheet);
  return toOrigin(layout, boxes, traceWires(sheet, names));
}

/** All grid points along a polyline; a slanted piece goes down or up first, then across. */
function pathThrough(sheet: Sheet, points: readonly Point[]): number[] {
  const path = [indexOf(sheet, points[0]!)];
  const go = (goal: number, stride: number): void => {
    for (let at = path.at(-1)!; at !== goal; path.push(at)) at += Math.sign(goal - at) * stride;
  };
  for (const { x, y } of points.slice(1)) {
    const from = pointOf(sheet, path.at(-1)!);
    go(indexOf(sheet, { x: from.x, y }), sheet.columns);
    go(indexOf(sheet, { x, y }), 1);
  }
  return path;
}

function boundsOf(boxes: readonly Box[], lines: readonly (readonly Point[])[], margin: number): Box {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  const take = (x1: number, x2: number, y1: number, y2: number): void => {
    left = Math.min(left, x1);
    right = Math.max(right, x2);
    top = Math.min(top, y1);
    bottom = Math.max(bottom, y2);
  };
  for (const box of boxes) take(box.left, box.right, box.top, box.bottom);
  for (const line of lines) for (const { x, y } of line) take(x, x, y, y);
  if (left > right) return { left: 0, right: 0, top: 0, bottom: 0 };
  return {
    left: Math.floor(left) - margin,
    right: Math.ceil(right) + margin,
    top: Math.floor(top) - margin,
    bottom: Math.ceil(bottom) + margin,
  };
}

/** Moves everything so that it begins half a unit from the edges, and no lane above the top. */
function toOrigin(
  layout: Layout,
  boxes: readonly Box[],
  { wires, dots }: Pick<SchematicPlan, 'wires' | 'dots'>,
): SchematicPlan {
  const { draft, lanes, links, openings } = layout;
  const used = boundsOf(
    boxes,
    wires.map((wire) => wire.points),
    0,
  );
  const dx = 0.5 - used.left;
  const dy = Math.max(0, 0.5 - used.top);
  const move = <T extends Point>(point: T): T => ({ ...point, x: point.x + dx, y: point.y + dy });
  return {
    width: used.right + dx + 0.5,
    height: Math.max(used.bottom + dy + 0.5, ...lanes.map((lane) => lane.bottom + dy)),
    trunkWidth: layout.trunkWidth + dx,
    speakerX: layout.speakerX + dx,
    parts: draft.parts.map((part) => ({
      ...part,
      centre: move(part.centre),
      pins: [move(part.pins[0]), move(part.pins[1])],
      valueAnchor: move(part.valueAnchor),
      nameAnchor: move(part.nameAnchor),
    })),
    wires: wires.map((wire) => ({ ...wire, points: wire.points.map(move) })),
    dots: dots.map(move),
    lanes: lanes.map((lane, k) => ({
      ...lane,
      top: lane.top === 0 && k === 0 ? 0 : lane.top + dy,
      bottom: lane.bottom + dy,
    })),
    links,
    openings,
  };
}

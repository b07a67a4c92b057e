import type { Point, SchematicPlan } from '../../../core/schematic/plan.ts';

/** Right of a join and below its rail, where a leg's first wire runs down beside it. */
const BESIDE_JOIN: Point = { x: 0.35, y: 0.85 };
const ABOVE_WIRE = 0.35;

/** Where the name of a node stands, in drawing units, and how it is set there. */
export interface NodeLabel extends Point {
  readonly align: 'start' | 'middle';
}

/** Beside the node's first join; a node without one is named above the middle of its longest level stretch of wire. */
export function nodeLabel(plan: SchematicPlan, node: string): NodeLabel | null {
  const dot = plan.dots.find((candidate) => candidate.node === node);
  if (dot) return { x: dot.x + BESIDE_JOIN.x, y: dot.y + BESIDE_JOIN.y, align: 'start' };
  let label: NodeLabel | null = null;
  let longest = -1;
  for (const { points } of plan.wires.filter((wire) => wire.node === node)) {
    for (let k = 1; k < points.length; k++) {
      const [a, b] = [points[k - 1]!, points[k]!];
      const length = a.y === b.y ? Math.abs(b.x - a.x) : 0;
      if (length <= longest) continue;
      longest = length;
      label = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 - ABOVE_WIRE, align: 'middle' };
    }
  }
  return label;
}

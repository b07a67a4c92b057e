import type { Part } from '../circuit/part.ts';
import type { Point, SchematicPlan } from './plan.ts';

/** What the drawing before an edit looked like. */
export interface Memory {
  placeOf(partId: string): Point | undefined;
  wasLink(partId: string): boolean;
  /** Leftmost wire or pin of a node. */
  leftOf(node: string): number | undefined;
  readonly isEmpty: boolean;
}

export function memoryOf(parts: readonly Part[], previous: SchematicPlan | undefined): Memory {
  const places = new Map(previous?.parts.map((part) => [part.partId, part.centre]));
  const links = new Set(previous?.links);
  const lefts = new Map<string, number>();
  const settle = (node: string, points: readonly Point[]): void => {
    lefts.set(node, Math.min(lefts.get(node) ?? Infinity, ...points.map(({ x }) => x)));
  };
  for (const { node, points } of previous?.wires ?? []) settle(node, points);
  const pins = new Map(previous?.parts.map((part) => [part.partId, part.pins]));
  for (const { id, nodes } of parts) {
    const [first, second] = pins.get(id) ?? [];
    // A node without a wire is known by the pin of its only part.
    if (first && !lefts.has(nodes[0])) settle(nodes[0], [first]);
    if (second && !lefts.has(nodes[1])) settle(nodes[1], [second]);
  }
  return {
    placeOf: (partId) => places.get(partId),
    wasLink: (partId) => links.has(partId),
    leftOf: (node) => lefts.get(node),
    isEmpty: previous === undefined,
  };
}

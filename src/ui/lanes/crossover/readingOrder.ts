import type { PlacedPart, SchematicPlan } from '../../../core/schematic/plan.ts';

/** The parts of a drawing as they are read: what is shared, then lane by lane, each from the left, then from the top. */
export function readingOrder({ parts, lanes }: SchematicPlan): PlacedPart[] {
  const place = (placed: PlacedPart) => (lanes[placed.lane]?.kind === 'shared' ? -1 : placed.lane);
  return [...parts].sort((a, b) => place(a) - place(b) || a.centre.x - b.centre.x || a.centre.y - b.centre.y);
}

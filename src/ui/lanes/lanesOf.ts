import type { SchematicLane, SchematicPlan } from '../../core/schematic/plan.ts';
import type { Way } from '../waysInOrder.ts';

/** Height given to a way that the drawing does not show yet, in drawing units. */
const EMPTY_LANE = 8;

/**
 * The lanes of the drawing that make rows: those of the plan whose speaker is still there, and below them one for each way
 * that the plan lacks, as when a new circuit cannot be drawn and the last plan stays.
 */
export function lanesOf(plan: SchematicPlan | null, ways: readonly Way[]): SchematicLane[] {
  const lanes = (plan?.lanes ?? []).filter(
    (lane) => lane.kind !== 'way' || ways.some((way) => way.speakerId === lane.partId),
  );
  let bottom = Math.max(0, ...lanes.map((lane) => lane.bottom));
  for (const way of ways) {
    if (lanes.some((lane) => lane.kind === 'way' && lane.partId === way.speakerId)) continue;
    lanes.push({ kind: 'way', partId: way.speakerId, top: bottom, bottom: bottom + EMPTY_LANE });
    bottom += EMPTY_LANE;
  }
  return lanes;
}

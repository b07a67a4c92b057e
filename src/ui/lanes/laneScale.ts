import type { SchematicLane } from '../../core/schematic/plan.ts';

export interface LaneRow {
  readonly lane: SchematicLane;
  readonly topPx: number;
  readonly heightPx: number;
}

/** How the drawing's heights become pixels: rigid inside a lane, stretched between lanes. */
export interface LaneScale {
  readonly unitPx: number;
  readonly rows: readonly LaneRow[];
  readonly heightPx: number;
  /** Pixels from the top of the drawing for a height in drawing units. */
  toPx(y: number): number;
}

/** A row that is taller than its lane keeps the drawing near its own top, so that it stays beside the driver's name. */
const GREATEST_INSET_PX = 18;

/**
 * Fits the drawing's lanes to rows of at least `leastPx(lane)`, so that a driver's card lies beside its lane, and leaves
 * `belowPx(lane)` free under each.
 *
 * Lanes that overlap the one above (parts shared by several ways) make no row of their own; their heights follow the
 * rows around them.
 * @example laneScale(plan.lanes, plan.height, 12, () => 120, () => 0).toPx(3)
 */
export function laneScale(
  lanes: readonly SchematicLane[],
  height: number,
  unitPx: number,
  leastPx: (lane: SchematicLane) => number,
  belowPx: (lane: SchematicLane) => number,
): LaneScale {
  const rows: LaneRow[] = [];
  const knots: { y: number; px: number }[] = [];
  let px = 0;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const lane of [...lanes].sort((a, b) => a.top - b.top || a.bottom - b.bottom)) {
    if (lane.top < bottom || lane.bottom <= lane.top) continue;
    if (knots.length > 0) px += (lane.top - bottom) * unitPx;
    else px += lane.top * unitPx;
    bottom = lane.bottom;
    const drawnPx = (lane.bottom - lane.top) * unitPx;
    const filledPx = Math.max(drawnPx, leastPx(lane));
    const insetPx = Math.min((filledPx - drawnPx) / 2, GREATEST_INSET_PX);
    const heightPx = filledPx + belowPx(lane);
    rows.push({ lane, topPx: px, heightPx });
    knots.push({ y: lane.top, px: px + insetPx }, { y: lane.bottom, px: px + insetPx + drawnPx });
    px += heightPx;
  }
  const restPx = knots.length > 0 ? Math.max(0, height - bottom) * unitPx : height * unitPx;
  return { unitPx, rows, heightPx: px + restPx, toPx: (y) => alongKnots(knots, y, unitPx) };
}

function alongKnots(knots: readonly { y: number; px: number }[], y: number, unitPx: number): number {
  const first = knots[0];
  const last = knots[knots.length - 1];
  if (!first || !last) return y * unitPx;
  if (y <= first.y) return first.px + (y - first.y) * unitPx;
  if (y >= last.y) return last.px + (y - last.y) * unitPx;
  const upper = knots.findIndex((knot) => knot.y >= y);
  const a = knots[upper - 1] ?? first;
  const b = knots[upper] ?? last;
  return b.y === a.y ? b.px : a.px + ((y - a.y) / (b.y - a.y)) * (b.px - a.px);
}

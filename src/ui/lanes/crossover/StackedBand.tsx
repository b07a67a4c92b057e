import { useMemo } from 'react';
import type { PlacedPart, SchematicPlan } from '../../../core/schematic/plan.ts';
import type { LaneRow, LaneScale } from '../laneScale.ts';
import { Schematic } from './Schematic.tsx';

const LEFT_PX = 14;
const RIGHT_PX = 8;
/** Shown beyond the lane's own height, so that texts and symbols at its edges are whole. */
const OVER_UNITS = 1.3;
/** Of the trunk a band without parts in it shows no more than the wires that come in. */
const INCOMING_UNITS = 1.5;

/** One lane's stretch of the drawing. */
export function StackedBand({
  plan,
  parts,
  scale,
  row,
  widthPx,
  nodesNamed,
  startSection,
}: {
  readonly plan: SchematicPlan;
  readonly parts: readonly PlacedPart[];
  readonly scale: LaneScale;
  readonly row: LaneRow;
  readonly widthPx: number;
  readonly nodesNamed: boolean;
  readonly startSection: (speakerId: string) => void;
}) {
  const inTrunk = parts.some((placed) => placed.centre.x < plan.trunkWidth);
  const from = inTrunk ? 0 : Math.max(0, plan.trunkWidth - INCOMING_UNITS);
  const { unitPx } = scale;
  const view = useMemo(
    () => ({
      scale,
      topPx: row.topPx - OVER_UNITS * unitPx,
      heightPx: row.heightPx + 2 * OVER_UNITS * unitPx,
      leftPx: LEFT_PX - from * unitPx,
    }),
    [scale, row, unitPx, from],
  );
  return (
    <Schematic
      plan={plan}
      parts={parts}
      view={view}
      widthPx={Math.max(widthPx, LEFT_PX + RIGHT_PX + (plan.width - from) * unitPx)}
      nodesNamed={nodesNamed}
      startSection={startSection}
    />
  );
}

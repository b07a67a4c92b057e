import { useMemo } from 'react';
import type { PlacedPart, SchematicPlan } from '../../../core/schematic/plan.ts';
import type { LaneRow, LaneScale } from '../laneScale.ts';
import { Schematic } from './Schematic.tsx';

const LEFT_PX = 14;
const RIGHT_PX = 4;
/** Shown beyond the lane's own height, so that texts and symbols at its edges are whole. */
const OVER_UNITS = 1.3;
/** Of the trunk a band without parts in it shows no more than the wires that come in. */
const INCOMING_UNITS = 0.5;

/** One lane's stretch of the drawing. */
export function StackedBand({
  plan,
  parts,
  scale,
  unitPx,
  row,
  widthPx,
  label,
  nodesNamed,
  startSection,
}: {
  readonly plan: SchematicPlan;
  readonly parts: readonly PlacedPart[];
  readonly scale: LaneScale;
  readonly unitPx: number;
  readonly row: LaneRow;
  readonly widthPx: number;
  readonly label: string;
  readonly nodesNamed: boolean;
  readonly startSection: (speakerId: string) => void;
}) {
  const inTrunk = parts.some((placed) => placed.centre.x < plan.trunkWidth);
  const from = inTrunk ? 0 : Math.max(0, plan.trunkWidth - INCOMING_UNITS);
  const overPx = OVER_UNITS * scale.unitPx;
  const view = useMemo(
    () => ({
      scale,
      unitPx,
      topPx: row.topPx - overPx,
      heightPx: row.heightPx + 2 * overPx,
      leftPx: LEFT_PX - from * unitPx,
    }),
    [scale, row, unitPx, overPx, from],
  );
  return (
    <Schematic
      plan={plan}
      parts={parts}
      view={view}
      widthPx={Math.max(widthPx, LEFT_PX + RIGHT_PX + (plan.width - from) * unitPx)}
      label={label}
      nodesNamed={nodesNamed}
      startSection={startSection}
    />
  );
}

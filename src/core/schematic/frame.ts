import type { CircuitView } from './circuitView.ts';
import { halfWay, type LegY } from './drawRow.ts';
import { hotEnd, innerReturn } from './row.ts';
import { type RowSize, rowSize } from './rowSize.ts';
import type { Stage } from './stages.ts';

/** A stage with its place in the drawing; the places are filled in one after another. */
export interface Frame {
  readonly stage: Stage;
  readonly parent: Frame | null;
  readonly children: readonly Frame[];
  readonly depth: number;
  /** Numbers of the way lanes it feeds, ascending; a way's frame has its own. */
  readonly lanes: readonly number[];
  size: RowSize;
  /** Where the columns of its row stand. */
  xs: number[];
  /** Where a shared row fans out. */
  busX: number;
  hotY: number;
  /** One for each return rail, from the outermost. */
  railYs: number[];
  /** Where the middle of a leg stands that hangs between two heights. */
  legY: LegY;
}

/** Builds frames for a stage and all it feeds; `laneOf` knows the lane of a speaker's edge. */
export function framesOf(
  view: CircuitView,
  stage: Stage,
  laneOf: (edge: number) => number,
  room: number,
  parent: Frame | null = null,
): Frame {
  const isWay = stage.speaker !== null;
  const lanes: number[] = [];
  const children: Frame[] = [];
  const frame: Frame = {
    stage,
    parent,
    children,
    depth: parent === null ? 0 : parent.depth + 1,
    lanes,
    size: rowSize(view, stage.row, isWay, room),
    xs: [],
    busX: 0,
    hotY: 0,
    railYs: [],
    legY: halfWay,
  };
  for (const child of stage.children) children.push(framesOf(view, child, laneOf, room, frame));
  if (stage.speaker !== null) lanes.push(laneOf(stage.speaker.edge));
  lanes.push(...children.flatMap((child) => child.lanes).sort((a, b) => a - b));
  return frame;
}

export const isWay = (frame: Frame): boolean => frame.stage.speaker !== null;
export const hotOf = (frame: Frame): string => frame.stage.row.columns[0]!.node;
export const returnOf = (frame: Frame): string => frame.stage.row.rails[0]!;
export const innerHotOf = (frame: Frame): string => hotEnd(frame.stage.row);
export const innerReturnOf = (frame: Frame): string => innerReturn(frame.stage.row);
export const hasReturnParts = (frame: Frame): boolean => frame.stage.row.rails.length > 1;

/** A frame and everything below it, it first. */
export const withDescendants = (frame: Frame): Frame[] => [frame, ...frame.children.flatMap(withDescendants)];

/** The lowest unbroken run of its lanes: no other way passes through there. */
export function lowestRun(frame: Frame): [number, number] {
  const { lanes } = frame;
  let first = lanes.length - 1;
  while (first > 0 && lanes[first - 1] === lanes[first]! - 1) first -= 1;
  return [lanes[first]!, lanes.at(-1)!];
}

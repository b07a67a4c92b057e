import type { LaneScale } from '../laneScale.ts';

/** Where the drawing stands on the screen: its scale, and the stretch of it that is shown. */
export interface SchematicView {
  /** Pixels for one drawing unit across, and for symbols and the distances of their texts. */
  readonly unitPx: number;
  readonly scale: LaneScale;
  /** Top of the shown stretch, in pixels of the whole drawing. */
  readonly topPx: number;
  readonly heightPx: number;
  readonly leftPx: number;
}

export const xPx = (view: SchematicView, x: number): number => view.leftPx + x * view.unitPx;
export const yPx = (view: SchematicView, y: number): number => view.scale.toPx(y) - view.topPx;

import type { PlacedPart } from '../../../core/schematic/plan.ts';
import { type SchematicView, xPx, yPx } from './schematicView.ts';

export interface HandleBox {
  readonly leftPx: number;
  readonly topPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Least side of what is hit with a finger, and the height of a value. */
const TARGET_PX = 24;

/** An upright part's handle leaves out its leads, so that the one on the rail above it stays clear. */
const UPRIGHT_SHARE = 0.8;

/**
 * What of the drawing picks a part: its symbol and its name, clear of its value, which is a field of its own above a level
 * part and at the right of an upright one.
 */
export function partHandle(placed: PlacedPart, view: SchematicView): HandleBox {
  const [a, b] = placed.pins;
  const { unitPx } = view;
  const middle = { xPx: xPx(view, placed.centre.x), yPx: yPx(view, placed.centre.y) };
  const level = placed.orientation === 'horizontal';
  const length = level ? Math.abs(a.x - b.x) : Math.abs(a.y - b.y) * UPRIGHT_SHARE;
  const lengthPx = Math.max(TARGET_PX, length * unitPx);
  const hasValue = placed.kind === 'resistor' || placed.kind === 'capacitor' || placed.kind === 'inductor';
  if (level) {
    const below = hasValue ? (placed.valueAnchor.y - placed.centre.y) * unitPx + TARGET_PX / 2 : -TARGET_PX / 2;
    const topPx = middle.yPx + Math.max(-TARGET_PX / 2, below);
    return { leftPx: middle.xPx - lengthPx / 2, topPx, widthPx: lengthPx, heightPx: TARGET_PX };
  }
  const right = hasValue ? (placed.valueAnchor.x - placed.centre.x) * unitPx : TARGET_PX / 2;
  const leftPx = middle.xPx + Math.min(TARGET_PX / 2, right) - TARGET_PX;
  return { leftPx, topPx: middle.yPx - lengthPx / 2, widthPx: TARGET_PX, heightPx: lengthPx };
}

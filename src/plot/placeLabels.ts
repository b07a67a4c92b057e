import { labelCandidates } from './labelCandidates.ts';
import { type Box, boxesOverlap, LabelField } from './labelField.ts';

/** A curve in pixels that wants its name beside it. `xsPx` ascends. */
export interface LabelledCurve {
  readonly id: string;
  readonly xsPx: ArrayLike<number>;
  readonly ysPx: ArrayLike<number>;
  /** Size of the text. */
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Where a name stands: the middle of its text. */
export interface PlacedLabel {
  readonly id: string;
  readonly x: number;
  readonly y: number;
}

/** A place must be this much better than the present one before a label moves there, so that labels do not flicker. */
const STAY = 12;

/**
 * Places the names of curves directly beside them, so that no legend is needed: inside `area`, never over one another or
 * over a `taken` box, preferably clear of every curve, nearer to their own curve than to any other, and towards the
 * right-hand end. A curve whose name fits nowhere (it is out of sight, or all is full) gets none. Earlier curves choose
 * first. With `previous` a label stays where it was on its curve unless another place is clearly better.
 * All in pixels, y downwards. Pure: the same input gives the same output.
 */
export function placeLabels(
  curves: readonly LabelledCurve[],
  area: Box,
  taken: readonly Box[] = [],
  previous: readonly PlacedLabel[] = [],
): readonly PlacedLabel[] {
  const field = new LabelField(curves, area);
  const placed: PlacedLabel[] = [];
  const boxes: Box[] = [...taken];
  for (const [index, curve] of curves.entries()) {
    const before = previous.find((label) => label.id === curve.id);
    let best: { x: number; y: number; box: Box; cost: number } | null = null;
    for (const { x, y } of labelCandidates(field, index, curve, area)) {
      const box = boxAround(x, y, curve);
      if (!inside(box, area) || boxes.some((other) => boxesOverlap(other, box))) continue;
      const stays = before !== undefined && Math.abs(before.x - x) < 1 && Math.abs(before.y - y) < 2 * curve.heightPx;
      const cost = field.cost(index, box) - (stays ? STAY : 0);
      if (best === null || cost < best.cost) best = { x, y, box, cost };
    }
    if (best === null) continue;
    placed.push({ id: curve.id, x: best.x, y: best.y });
    boxes.push(best.box);
  }
  return placed;
}

const boxAround = (x: number, y: number, size: { widthPx: number; heightPx: number }): Box => ({
  left: x - size.widthPx / 2,
  right: x + size.widthPx / 2,
  top: y - size.heightPx / 2,
  bottom: y + size.heightPx / 2,
});

const inside = (box: Box, area: Box): boolean =>
  box.left >= area.left && box.right <= area.right && box.top >= area.top && box.bottom <= area.bottom;

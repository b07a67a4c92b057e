import { useDragGesture } from '../../../../fields/useDragGesture.ts';
import { useHeldKeys } from '../../../../fields/useHeldKeys.ts';
import type { BafflePlace } from '../../keepOnBaffle.ts';
import type { Box } from '../cabinetDrawing.ts';

const ARROWS = new Map<string, readonly [number, number]>([
  ['ArrowLeft', [-1, 0]],
  ['ArrowRight', [1, 0]],
  ['ArrowUp', [0, 1]],
  ['ArrowDown', [0, -1]],
]);
const STEP_M = 1e-3;
const COARSE_STEP_M = 1e-2;
/** Smallest side that a finger can hit. */
const LEAST_TARGET_PX = 26;
/** A round handle holds a square of 24 px from this width on; smaller ones stay square. */
const LEAST_ROUND_PX = 34;

/**
 * The handle over a thing on the front view, moved by dragging or by arrow keys (1 mm, with Shift 10 mm): one drag, or
 * one held key, is one undo step. Alt slows the pointer to a tenth.
 */
export function Movable({
  label,
  box,
  round,
  place,
  pxPerM,
  move,
  pick,
  picked,
  hover,
}: {
  readonly label: string;
  /** What it covers of the drawing; small things get a larger handle. */
  readonly box: Box;
  readonly round: boolean;
  readonly place: BafflePlace;
  readonly pxPerM: number;
  readonly move: (place: BafflePlace) => void;
  readonly pick: () => void;
  readonly picked: boolean;
  readonly hover?: (over: boolean) => void;
}) {
  const keys = useHeldKeys();
  const drag = useDragGesture<BafflePlace>({
    begin: () => {
      pick();
      return place;
    },
    move: (start, { dxPx, dyPx, alt }) => {
      const share = (alt ? 0.1 : 1) / pxPerM;
      move({ xM: start.xM + dxPx * share, yM: start.yM - dyPx * share });
    },
    tap: pick,
  });
  const widthPx = Math.max(LEAST_TARGET_PX, box.widthPx);
  const heightPx = Math.max(LEAST_TARGET_PX, box.heightPx);
  return (
    <button
      type="button"
      className="movable"
      data-round={round && Math.min(widthPx, heightPx) >= LEAST_ROUND_PX ? '' : undefined}
      style={{
        left: box.leftPx + (box.widthPx - widthPx) / 2,
        top: box.topPx + (box.heightPx - heightPx) / 2,
        width: widthPx,
        height: heightPx,
      }}
      aria-label={label}
      aria-pressed={picked}
      onKeyDown={(event) => {
        const arrow = ARROWS.get(event.key);
        if (arrow) {
          event.preventDefault();
          keys.hold();
          const step = event.shiftKey ? COARSE_STEP_M : STEP_M;
          move({ xM: place.xM + arrow[0] * step, yM: place.yM + arrow[1] * step });
        } else if (event.key === 'Enter' || event.key === ' ') {
          event.preventDefault();
          pick();
        }
      }}
      onKeyUp={keys.release}
      onFocus={() => hover?.(true)}
      onBlur={() => {
        keys.release();
        hover?.(false);
      }}
      onPointerEnter={() => hover?.(true)}
      onPointerLeave={() => hover?.(false)}
      {...drag}
    />
  );
}

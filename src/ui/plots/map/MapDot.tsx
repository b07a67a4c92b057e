import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { Box } from '../../../plot/index.ts';
import type { MapScales } from './mapScales.ts';

export interface MapBox {
  readonly volumeM3: number;
  readonly tuningHz: number;
}

/** One press of an arrow key, and with Shift: as a ratio of volume or tuning. */
const STEP = 1.01;
const LONG_STEP = 1.1;
const ARROWS: Readonly<Record<string, readonly [volume: number, tuning: number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** What the dot covers. */
export const aroundDot = (x: number, y: number): Box => ({ left: x - 14, right: x + 14, top: y - 14, bottom: y + 14 });

/** The present box: dragged, or moved by the arrow keys; Escape during a drag puts it back. Stays within the map. */
export function MapDot({
  present,
  scales,
  text,
  toLocal,
  onMove,
  onCommit,
  onCancel,
}: {
  present: MapBox;
  scales: MapScales;
  text: string;
  /** From the page's coordinates to those of the drawing. */
  toLocal(event: PointerEvent): { readonly x: number; readonly y: number };
  onMove(volumeM3: number, tuningHz: number): void;
  onCommit(volumeM3: number, tuningHz: number): void;
  /** In place of moving back to where the drag began. */
  onCancel?: () => void;
}) {
  const drag = useRef<{ readonly start: MapBox; last: MapBox } | null>(null);
  const inside = ({ volumeM3, tuningHz }: MapBox): MapBox => ({
    volumeM3: clamp(volumeM3, scales.volume.domainHz),
    tuningHz: clamp(tuningHz, scales.tuning.domainHz),
  });
  const at = inside(present);
  const move = (box: MapBox): MapBox => {
    const to = inside(box);
    onMove(to.volumeM3, to.tuningHz);
    return to;
  };
  const end = (box: MapBox) => {
    drag.current = null;
    onCommit(box.volumeM3, box.tuningHz);
  };

  const onPointerDown = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus();
    drag.current = { start: present, last: at };
  };
  const onPointerMove = (event: PointerEvent<HTMLDivElement>) => {
    if (drag.current === null) return;
    const { x, y } = toLocal(event);
    drag.current.last = move({ volumeM3: scales.volume.toHz(x), tuningHz: scales.tuning.toHz(y) });
  };
  const onPointerUp = () => {
    if (drag.current !== null) end(drag.current.last);
  };
  const onPointerCancel = () => {
    if (drag.current !== null) putBack(drag.current.start);
  };
  const putBack = (start: MapBox) => {
    if (onCancel) {
      drag.current = null;
      onCancel();
      return;
    }
    onMove(start.volumeM3, start.tuningHz);
    end(start);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && drag.current !== null) {
      event.preventDefault();
      event.stopPropagation();
      putBack(drag.current.start);
      return;
    }
    const arrow = ARROWS[event.key];
    if (arrow === undefined) return;
    event.preventDefault();
    const ratio = event.shiftKey ? LONG_STEP : STEP;
    const to = move({ volumeM3: at.volumeM3 * ratio ** arrow[0], tuningHz: at.tuningHz * ratio ** arrow[1] });
    onCommit(to.volumeM3, to.tuningHz);
  };

  return (
    <div
      className="map-dot"
      role="slider"
      tabIndex={0}
      aria-label="Box: left and right for volume, up and down for tuning"
      aria-valuenow={at.volumeM3 * 1000}
      aria-valuemin={scales.volume.domainHz[0] * 1000}
      aria-valuemax={scales.volume.domainHz[1] * 1000}
      aria-valuetext={text}
      style={{ left: scales.volume.toPx(at.volumeM3), top: scales.tuning.toPx(at.tuningHz) }}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={onPointerCancel}
      onKeyDown={onKeyDown}
    >
      <svg width="32" height="32" viewBox="-16 -16 32 32" aria-hidden="true" focusable="false">
        <title>Box</title>
        <circle className="map-dot-ring" r={7} />
        <path className="map-dot-cross" d="M-14 0H-9M9 0H14M0 -14V-9M0 9V14" />
      </svg>
    </div>
  );
}

const clamp = (value: number, [low, high]: readonly [number, number]): number => Math.min(Math.max(value, low), high);

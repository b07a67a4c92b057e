import { useEffect, useRef } from 'react';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';

/** How far the pointer is from where it went down, and which keys are held. */
export interface DragState {
  readonly dxPx: number;
  readonly dyPx: number;
  readonly shift: boolean;
  readonly alt: boolean;
}

export interface DragHandlers<Start> {
  /** What the drag starts from, read once when the pointer has passed the threshold. null: nothing to drag. */
  begin(): Start | null;
  /** Called for every movement; dispatches commands. */
  move(start: Start, drag: DragState): void;
  /** The pointer went up before the threshold. */
  tap?(): void;
}

interface Session<Start> {
  readonly pointerId: number;
  readonly element: Element;
  readonly xPx: number;
  readonly yPx: number;
  start: Start | null;
  dragging: boolean;
}

/** Below this a press is a click. */
const THRESHOLD_PX = 3;

/**
 * Pointer dragging as one undo step: the press captures the pointer, the gesture opens after 3 px, letting go closes it,
 * Escape (or a cancelled pointer) goes back to where it began. Spread the result on the element that is dragged.
 */
export function useDragGesture<Start>(handlers: DragHandlers<Start>) {
  const store = useWorkbenchStore();
  const session = useRef<Session<Start> | null>(null);
  const latest = useRef(handlers);
  latest.current = handlers;

  const finish = (how: 'end' | 'cancel') => {
    const ended = session.current;
    session.current = null;
    if (!ended) return;
    window.removeEventListener('keydown', onKeyDown.current, true);
    if (ended.element.hasPointerCapture(ended.pointerId)) ended.element.releasePointerCapture(ended.pointerId);
    if (!ended.dragging) return;
    if (how === 'end') store.getState().endGesture();
    else store.getState().cancelGesture();
  };
  const finishing = useRef(finish);
  finishing.current = finish;
  const onKeyDown = useRef((event: KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    finishing.current('cancel');
  });

  useEffect(() => () => finishing.current('end'), []);

  return {
    onPointerDown: (event: React.PointerEvent) => {
      if (event.button !== 0 || session.current) return;
      const element = event.currentTarget;
      element.setPointerCapture(event.pointerId);
      session.current = {
        pointerId: event.pointerId,
        element,
        xPx: event.clientX,
        yPx: event.clientY,
        start: null,
        dragging: false,
      };
      window.addEventListener('keydown', onKeyDown.current, true);
    },
    onPointerMove: (event: React.PointerEvent) => {
      const held = session.current;
      if (!held || held.pointerId !== event.pointerId) return;
      const dxPx = event.clientX - held.xPx;
      const dyPx = event.clientY - held.yPx;
      if (!held.dragging) {
        if (Math.hypot(dxPx, dyPx) < THRESHOLD_PX) return;
        held.start = latest.current.begin();
        if (held.start === null) {
          finish('cancel');
          return;
        }
        held.dragging = true;
        store.getState().beginGesture();
      }
      if (held.start === null) return;
      latest.current.move(held.start, { dxPx, dyPx, shift: event.shiftKey, alt: event.altKey });
    },
    onPointerUp: (event: React.PointerEvent) => {
      const held = session.current;
      if (!held || held.pointerId !== event.pointerId) return;
      const tapped = !held.dragging;
      finish('end');
      if (tapped) latest.current.tap?.();
    },
    onPointerCancel: () => finish('cancel'),
    onLostPointerCapture: (event: React.PointerEvent) => {
      if (session.current?.pointerId === event.pointerId) finish('end');
    },
  };
}

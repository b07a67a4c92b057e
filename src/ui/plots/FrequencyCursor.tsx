import type { Ref } from 'react';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';
import { DOMAIN_HZ, type PlotStructure } from './plotStructure.ts';

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1 / 12,
  ArrowUp: 1 / 12,
  ArrowLeft: -1 / 12,
  ArrowDown: -1 / 12,
  PageUp: 1,
  PageDown: -1,
};
const START_HZ = 1000;

/** A frequency that stays under the cursor when the pointer leaves. */
export interface CursorPin {
  readonly hz: number | null;
  set(hz: number | null): void;
}

const within = (hz: number): number => Math.min(DOMAIN_HZ[1], Math.max(DOMAIN_HZ[0], hz));

/**
 * The surface over a plot that is pointed at or stepped with the keys (a twelfth of an octave; page keys an octave). All
 * plots follow. A click, or a key, leaves the cursor where it is; Escape takes it away.
 */
export function FrequencyCursor({
  structure,
  label,
  pin,
  ref,
}: {
  structure: PlotStructure;
  label: string;
  pin: CursorPin;
  ref: Ref<HTMLDivElement>;
}) {
  const store = useWorkbenchStore();
  const { area } = structure;
  const hzUnder = (event: React.PointerEvent): number => {
    const box = event.currentTarget.getBoundingClientRect();
    return within(structure.x.toHz(area.left + event.clientX - box.left));
  };
  const keep = (hz: number | null): void => {
    pin.set(hz);
    store.getState().setCursor(hz);
  };
  const onKeyDown = (event: React.KeyboardEvent): void => {
    const present = store.getState().cursorHz ?? pin.hz ?? START_HZ;
    const octaves = STEPS[event.key];
    if (octaves !== undefined) keep(within(present * 2 ** octaves));
    else if (event.key === 'Home') keep(DOMAIN_HZ[0]);
    else if (event.key === 'End') keep(DOMAIN_HZ[1]);
    else if (event.key === 'Escape') keep(null);
    else return;
    event.preventDefault();
  };
  return (
    <div
      ref={ref}
      className="plot-cursor"
      role="slider"
      tabIndex={0}
      aria-label={`${label}: frequency to read`}
      aria-valuemin={DOMAIN_HZ[0]}
      aria-valuemax={DOMAIN_HZ[1]}
      aria-valuenow={START_HZ}
      aria-valuetext="no frequency chosen"
      style={{ left: area.left, top: area.top, width: area.right - area.left, height: area.bottom - area.top }}
      onPointerMove={(event) => store.getState().setCursor(hzUnder(event))}
      onPointerLeave={() => store.getState().setCursor(pin.hz)}
      onClick={(event) => keep(hzUnder(event as React.PointerEvent<HTMLDivElement>))}
      onKeyDown={onKeyDown}
    />
  );
}

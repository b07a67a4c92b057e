import type { UnitSystem } from '../../core/units/quantityKind.ts';
import type { Stepping } from './stepping.ts';
import { linearStep } from './stepQuantity.ts';
import type { DragState } from './useDragGesture.ts';

/** Pixels for a factor of ten. */
const DECADE_PX = 240;

/**
 * The value after dragging sideways from `start`: preferred values and other positive sizes by a factor (240 px a decade,
 * to three digits), linear ones by one step a pixel. Shift is ten times as fast, Alt a tenth.
 * @example dragQuantity(6.8e-6, { by: 'series' }, { dxPx: 240, dyPx: 0, shift: false, alt: false }, 'metric') // 6.8e-5
 */
export function dragQuantity(start: number, stepping: Stepping, drag: DragState, system: UnitSystem): number {
  const speed = drag.shift ? 10 : drag.alt ? 0.1 : 1;
  if (stepping.by === 'linear') {
    const step = linearStep(stepping, system);
    const finest = step * (drag.alt ? 0.1 : 1);
    return Number((Math.round((start + drag.dxPx * step * speed) / finest) * finest).toPrecision(10));
  }
  if (!(start > 0)) return start;
  return Number((start * 10 ** ((drag.dxPx * speed) / DECADE_PX)).toPrecision(3));
}

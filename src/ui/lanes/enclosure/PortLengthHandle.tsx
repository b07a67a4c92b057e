import type { Port } from '../../../core/document/schema.ts';
import { quantityText } from '../../../core/units/formatQuantity.ts';
import { dragQuantity } from '../../fields/dragQuantity.ts';
import { showInField } from '../../fields/showInField.ts';
import { stepKeysOf } from '../../fields/stepKeysOf.ts';
import { steppingOf } from '../../fields/stepping.ts';
import { stepQuantity } from '../../fields/stepQuantity.ts';
import { useDragGesture } from '../../fields/useDragGesture.ts';
import { useHeldKeys } from '../../fields/useHeldKeys.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { type CabinetDrawing, onSide } from './cabinetDrawing.ts';
import { portEndHeightPx } from './portEndHeight.ts';

const HALF_WIDTH_PX = 13;
const SHORTEST_M = 0.001;

/** The inner end of a port in the side view: dragged or stepped, it sets the port's length. */
export function PortLengthHandle({ drawing, port }: { readonly drawing: CabinetDrawing; readonly port: Port }) {
  const store = useWorkbenchStore();
  const system = useWorkbench((s) => s.settings.units);
  const depthM = useWorkbench((s) => s.project.enclosure.depthM);
  const panelM = useWorkbench((s) => s.project.enclosure.panelM);
  const keys = useHeldKeys();
  const inwards = port.face === 'front' ? 1 : -1;
  const longest = depthM - panelM;
  const send = (lengthM: number) => {
    const bounded = Math.min(longest, Math.max(SHORTEST_M, lengthM));
    store.getState().dispatch({ type: 'set-port', id: port.id, changes: { lengthM: bounded } });
  };
  const pick = () => store.getState().select({ kind: 'port', id: port.id });
  const drag = useDragGesture<number>({
    begin: () => {
      pick();
      return port.lengthM;
    },
    move: (start, state) => {
      // One pixel of the drawing is what it is on the drawing, whatever the step.
      const dxPx = ((inwards * state.dxPx) / drawing.pxPerM) * 1000;
      send(dragQuantity(start, { by: 'linear', step: 1e-3 }, { ...state, dxPx, shift: false }, system));
    },
    tap: pick,
  });
  const heightPx = portEndHeightPx(drawing, port);
  const end = onSide(drawing, port.face === 'front' ? port.lengthM : depthM - port.lengthM, port.yM);
  return (
    <div
      className="port-end"
      role="slider"
      tabIndex={0}
      aria-label={`End of port ${port.id}: its length`}
      aria-orientation="horizontal"
      aria-valuemin={SHORTEST_M * 1e3}
      aria-valuemax={longest * 1e3}
      aria-valuenow={port.lengthM * 1e3}
      aria-valuetext={quantityText(showInField(port.lengthM, 'length', system, 'mm'))}
      style={{
        left: end.xPx - HALF_WIDTH_PX,
        top: end.yPx - heightPx / 2,
        width: 2 * HALF_WIDTH_PX,
        height: heightPx,
      }}
      onKeyDown={(event) => {
        const turned = event.key === 'ArrowRight' ? 'ArrowUp' : event.key === 'ArrowLeft' ? 'ArrowDown' : event.key;
        const sideways = turned !== event.key;
        const { shiftKey, altKey, ctrlKey, metaKey } = event;
        const step = stepKeysOf({ key: turned, shiftKey, altKey, ctrlKey, metaKey });
        if (!step) return;
        event.preventDefault();
        keys.hold();
        const direction = sideways && inwards === -1 ? (step.direction === 1 ? -1 : 1) : step.direction;
        const { series } = store.getState().settings;
        send(stepQuantity(port.lengthM, steppingOf('length'), { ...step, direction }, series, system));
      }}
      onKeyUp={keys.release}
      onBlur={keys.release}
      {...drag}
    />
  );
}

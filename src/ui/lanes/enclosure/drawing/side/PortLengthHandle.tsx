import { portName } from '../../../../../core/document/describe/portName.ts';
import type { Port } from '../../../../../core/document/schema.ts';
import { quantityText } from '../../../../../core/units/formatQuantity.ts';
import { dragQuantity } from '../../../../fields/dragQuantity.ts';
import { showInField } from '../../../../fields/showInField.ts';
import { stepKeysOf } from '../../../../fields/stepKeysOf.ts';
import { steppingOf } from '../../../../fields/stepping.ts';
import { stepQuantity } from '../../../../fields/stepQuantity.ts';
import { useDragGesture } from '../../../../fields/useDragGesture.ts';
import { useHeldKeys } from '../../../../fields/useHeldKeys.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { useWorkbenchStore } from '../../../../useWorkbenchStore.ts';
import type { SideDrawing } from '../cabinetDrawing.ts';
import { portEndHeightPx } from './portEndHeight.ts';
import { tubePlace } from './tubePlace.ts';

/** Half of its extent along the tube. */
const HALF_WIDTH_PX = 13;
const SHORTEST_M = 0.001;

/** The inner end of a port in the side view: dragged or stepped, it sets the port's length. */
export function PortLengthHandle({ drawing, port }: { readonly drawing: SideDrawing; readonly port: Port }) {
  const store = useWorkbenchStore();
  const system = useWorkbench((s) => s.settings.units);
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const keys = useHeldKeys();
  const { end, turnDeg, isUpright } = tubePlace(drawing, port, enclosure);
  const turnRad = (turnDeg * Math.PI) / 180;
  const inwards = Math.cos(turnRad) < -0.5 ? -1 : 1;
  const longest = (isUpright ? enclosure.heightM : enclosure.depthM) - enclosure.panelM;
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
      // One pixel along the tube is what it is on the drawing, whatever the step.
      const alongPx = state.dxPx * Math.cos(turnRad) + state.dyPx * Math.sin(turnRad);
      const dxPx = (alongPx / drawing.pxPerM) * 1000;
      send(dragQuantity(start, { by: 'linear', step: 1e-3 }, { ...state, dxPx, shift: false }, system));
    },
    tap: pick,
  });
  const acrossPx = portEndHeightPx(drawing, port);
  const [halfWidthPx, halfHeightPx] = isUpright ? [acrossPx / 2, HALF_WIDTH_PX] : [HALF_WIDTH_PX, acrossPx / 2];
  return (
    <div
      className="port-end"
      data-upright={isUpright ? '' : undefined}
      role="slider"
      tabIndex={0}
      aria-label={`End of ${portName(port.id)}: its length`}
      aria-orientation={isUpright ? 'vertical' : 'horizontal'}
      aria-valuemin={SHORTEST_M * 1e3}
      aria-valuemax={longest * 1e3}
      aria-valuenow={port.lengthM * 1e3}
      aria-valuetext={quantityText(showInField(port.lengthM, 'length', system, 'mm'))}
      style={{
        left: end.xPx - halfWidthPx,
        top: end.yPx - halfHeightPx,
        width: 2 * halfWidthPx,
        height: 2 * halfHeightPx,
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

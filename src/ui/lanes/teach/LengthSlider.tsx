import type { Port } from '../../../core/document/schema.ts';
import { quantityText } from '../../../core/units/formatQuantity.ts';
import { showInField } from '../../fields/showInField.ts';
import { stepKeysOf } from '../../fields/stepKeysOf.ts';
import { steppingOf } from '../../fields/stepping.ts';
import { stepQuantity } from '../../fields/stepQuantity.ts';
import { useDragGesture } from '../../fields/useDragGesture.ts';
import { useHeldKeys } from '../../fields/useHeldKeys.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { useBoxSize } from '../useBoxSize.ts';
import { portLengths } from './portLengths.ts';

const TICK_M = 0.05;

/** The large handle: the port's length from the bare hole to the longest that fits, dragged or stepped by 1 mm. */
export function LengthSlider({ port, begin }: { readonly port: Port; readonly begin: () => void }) {
  const store = useWorkbenchStore();
  const system = useWorkbench((s) => s.settings.units);
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const [track, { widthPx }] = useBoxSize<HTMLDivElement>();
  const keys = useHeldKeys();
  const { leastM, greatestM } = portLengths(enclosure, port);
  const span = Math.max(1e-6, greatestM - leastM);
  const bounded = (lengthM: number) => Math.min(greatestM, Math.max(leastM, lengthM));
  const send = (lengthM: number) =>
    store.getState().dispatch({ type: 'set-port', id: port.id, changes: { lengthM: bounded(lengthM) } });
  const drag = useDragGesture<number>({
    begin: () => {
      begin();
      return port.lengthM;
    },
    move: (start, { dxPx, alt }) => {
      const lengthM = start + (dxPx / Math.max(1, widthPx)) * span * (alt ? 0.1 : 1);
      send(Math.round(lengthM * 1000) / 1000);
    },
  });
  const length = (metres: number) => quantityText(showInField(metres, 'length', system, 'mm'));
  const share = (lengthM: number) => `${(100 * (lengthM - leastM)) / span}%`;
  const ticks = [];
  for (let at = Math.ceil(leastM / TICK_M) * TICK_M; at <= greatestM + 1e-9; at += TICK_M) ticks.push(at);
  return (
    <div ref={track} className="length-slider">
      <div className="length-slider-track" aria-hidden="true">
        <div className="length-slider-used" style={{ width: share(port.lengthM) }} />
        {ticks.map((at) => (
          <span key={at} className="length-slider-tick" style={{ left: share(at) }}>
            {length(at)}
          </span>
        ))}
      </div>
      <div
        className="length-slider-handle"
        role="slider"
        tabIndex={0}
        aria-label="Port length"
        aria-valuemin={leastM * 1e3}
        aria-valuemax={greatestM * 1e3}
        aria-valuenow={port.lengthM * 1e3}
        aria-valuetext={length(port.lengthM)}
        style={{ left: share(port.lengthM) }}
        onKeyDown={(event) => {
          const { shiftKey, altKey, ctrlKey, metaKey } = event;
          if (event.key === 'Home' || event.key === 'End') {
            event.preventDefault();
            keys.hold();
            send(event.key === 'Home' ? leastM : greatestM);
            return;
          }
          const key = event.key === 'ArrowRight' ? 'ArrowUp' : event.key === 'ArrowLeft' ? 'ArrowDown' : event.key;
          const step = stepKeysOf({ key, shiftKey, altKey, ctrlKey, metaKey });
          if (!step) return;
          event.preventDefault();
          if (!event.repeat) begin();
          keys.hold();
          send(stepQuantity(port.lengthM, steppingOf('length'), step, store.getState().settings.series, system));
        }}
        onKeyUp={keys.release}
        onBlur={keys.release}
        {...drag}
      />
    </div>
  );
}

import { quantityText } from '../../../core/units/formatQuantity.ts';
import { showInField } from '../../fields/showInField.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { useWays } from '../useWays.ts';
import { type CabinetDrawing, onFront } from './cabinetDrawing.ts';
import { driverSize } from './driverSize.ts';
import { type Footprint, keepOnBaffle } from './keepOnBaffle.ts';
import { Movable } from './Movable.tsx';
import { portFootprint } from './portFaces.ts';

/** What can be moved on the front: one handle for each driver and each port of the front, in lane order. */
export function FrontHandles({ drawing }: { readonly drawing: CabinetDrawing }) {
  const store = useWorkbenchStore();
  const ways = useWays();
  const { mounts, ports } = useWorkbench((s) => s.project.enclosure);
  const selection = useWorkbench((s) => s.selection);
  const system = useWorkbench((s) => s.settings.units);
  const length = (m: number) => quantityText(showInField(m, 'length', system, 'mm'));
  const where = ({ xM, yM }: { readonly xM: number; readonly yM: number }) => {
    const across = Math.abs(xM) < 5e-4 ? 'in the middle' : `${length(Math.abs(xM))} ${xM > 0 ? 'right' : 'left'}`;
    return `${across}, ${length(yM)} up; arrow keys move it`;
  };
  const boxOf = (place: { readonly xM: number; readonly yM: number }, half: Footprint) => {
    const { xPx, yPx } = onFront(drawing, place.xM, place.yM);
    const [w, h] = [half.halfWidthM * drawing.pxPerM, half.halfHeightM * drawing.pxPerM];
    return { leftPx: xPx - w, topPx: yPx - h, widthPx: 2 * w, heightPx: 2 * h };
  };
  return (
    <>
      {ways.map((way) => {
        const mount = mounts.find((candidate) => candidate.partId === way.speakerId);
        if (!mount) return null;
        const { radiusM } = driverSize(way.driver);
        const half = { halfWidthM: radiusM, halfHeightM: radiusM };
        return (
          <Movable
            key={way.speakerId}
            label={`${way.speakerId}, ${way.driver?.name ?? way.name}, ${where(mount)}`}
            box={boxOf(mount, half)}
            round
            place={mount}
            pxPerM={drawing.pxPerM}
            picked={selection?.kind === 'speaker' && selection.id === way.speakerId}
            pick={() => store.getState().select({ kind: 'speaker', id: way.speakerId })}
            hover={(over) => store.getState().lift(over ? way.speakerId : null)}
            move={(place) => {
              const { dispatch, project } = store.getState();
              const changes = keepOnBaffle(place, half, project.enclosure);
              dispatch({ type: 'set-mount', partId: way.speakerId, changes });
            }}
          />
        );
      })}
      {ports.map((port) =>
        port.face === 'front' ? (
          <Movable
            key={port.id}
            label={`Port ${port.id}, ${where(port)}`}
            box={boxOf(port, portFootprint(port))}
            round={port.shape.kind === 'round' && port.count === 1}
            place={port}
            pxPerM={drawing.pxPerM}
            picked={selection?.kind === 'port' && selection.id === port.id}
            pick={() => store.getState().select({ kind: 'port', id: port.id })}
            move={(place) => {
              const { dispatch, project } = store.getState();
              const changes = keepOnBaffle(place, portFootprint(port), project.enclosure);
              dispatch({ type: 'set-port', id: port.id, changes });
            }}
          />
        ) : null,
      )}
    </>
  );
}

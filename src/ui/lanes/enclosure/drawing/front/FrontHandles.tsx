import type { Line } from '../../../../../core/document/schema.ts';
import { quantityText } from '../../../../../core/units/formatQuantity.ts';
import { showInField } from '../../../../fields/showInField.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { useWorkbenchStore } from '../../../../useWorkbenchStore.ts';
import { useWays } from '../../../useWays.ts';
import { driverSize } from '../../driverSize.ts';
import { type BafflePlace, type Footprint, keepOnBaffle } from '../../keepOnBaffle.ts';
import { portFootprint } from '../../portFaces.ts';
import { type CabinetDrawing, onFront } from '../cabinetDrawing.ts';
import { lineMouth } from '../shape/lineMouth.ts';
import { radiatorFootprint } from '../shape/radiatorPlaces.ts';
import { Movable } from './Movable.tsx';

/** What can be moved on the front: a handle for each driver in lane order, then for each port, passive radiator and mouth of a line. */
export function FrontHandles({ drawing }: { readonly drawing: CabinetDrawing }) {
  const store = useWorkbenchStore();
  const ways = useWays();
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const selection = useWorkbench((s) => s.selection);
  const system = useWorkbench((s) => s.settings.units);
  const length = (m: number) => quantityText(showInField(m, 'length', system, 'mm'));
  const lean = Math.cos((enclosure.wood.frontLeanDeg * Math.PI) / 180);
  const where = ({ xM, yM }: BafflePlace) => {
    const across = Math.abs(xM) < 5e-4 ? 'in the middle' : `${length(Math.abs(xM))} ${xM > 0 ? 'right' : 'left'}`;
    return `${across}, ${length(yM)} up; arrow keys move it`;
  };
  const shared = (
    kind: 'speaker' | 'port' | 'radiator' | 'duct',
    id: string,
    words: string,
    place: BafflePlace,
    full: Footprint,
    send: (place: BafflePlace) => void,
  ) => {
    const half = { ...full, halfHeightM: full.halfHeightM * lean };
    const { xPx, yPx } = onFront(drawing, place.xM, place.yM);
    const [w, h] = [half.halfWidthM * drawing.pxPerM, half.halfHeightM * drawing.pxPerM];
    return {
      label: `${words}, ${where(place)}`,
      box: { leftPx: xPx - w, topPx: yPx - h, widthPx: 2 * w, heightPx: 2 * h },
      place,
      pxPerM: drawing.pxPerM,
      picked: selection?.kind === kind && selection.id === id,
      pick: () => store.getState().select({ kind, id }),
      move: (next: BafflePlace) => send(keepOnBaffle(next, half, store.getState().project.enclosure)),
    };
  };
  const { dispatch } = store.getState();
  return (
    <>
      {ways.map((way) => {
        const id = way.speakerId;
        const mount = enclosure.mounts.find((candidate) => candidate.partId === id);
        if (!mount || mount.frontChamberId !== null) return null;
        const { radiusM } = driverSize(way.driver);
        const half = { halfWidthM: radiusM, halfHeightM: radiusM };
        return (
          <Movable
            key={id}
            round
            hover={(over) => store.getState().lift(over ? id : null)}
            {...shared('speaker', id, `${id}, ${way.driver?.name ?? way.name}`, mount, half, (changes) =>
              dispatch({ type: 'set-mount', partId: id, changes }),
            )}
          />
        );
      })}
      {enclosure.ports.map((port) =>
        port.face === 'front' && port.toChamberId === null ? (
          <Movable
            key={port.id}
            round={port.shape.kind === 'round' && port.count === 1}
            {...shared('port', port.id, `Port ${port.id}`, port, portFootprint(port), (changes) =>
              dispatch({ type: 'set-port', id: port.id, changes }),
            )}
          />
        ) : null,
      )}
      {enclosure.passiveRadiators.map((radiator) =>
        radiator.face === 'front' ? (
          <Movable
            key={radiator.id}
            round={radiator.count === 1}
            {...shared(
              'radiator',
              radiator.id,
              radiator.name || 'Passive radiator',
              radiator,
              radiatorFootprint(radiator, enclosure),
              (changes) => dispatch({ type: 'set-radiator', id: radiator.id, changes }),
            )}
          />
        ) : null,
      )}
      {enclosure.lines.map((line) => {
        const end = openFront(line);
        if (!end) return null;
        const { widthM, heightM } = lineMouth(line, enclosure);
        const half = { halfWidthM: widthM / 2, halfHeightM: heightM / 2 };
        return (
          <Movable
            key={line.id}
            round={false}
            {...shared('duct', line.id, `Mouth of ${line.name || 'the line'}`, end, half, (place) =>
              dispatch({ type: 'set-line', id: line.id, changes: { end: { ...end, ...place } } }),
            )}
          />
        );
      })}
    </>
  );
}

const openFront = ({ end }: Line) => (end.kind === 'open' && end.face === 'front' ? end : null);

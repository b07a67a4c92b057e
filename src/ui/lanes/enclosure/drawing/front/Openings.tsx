import type { Port } from '../../../../../core/document/schema.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { openingCentresM, openingM } from '../../portFaces.ts';
import { type CabinetDrawing, onFront } from '../cabinetDrawing.ts';
import { PortTube } from '../profile/PortTube.tsx';
import { lineMouth } from '../shape/lineMouth.ts';
import { portSeat } from '../shape/portSeat.ts';
import { radiatorPlaces } from '../shape/radiatorPlaces.ts';

/** Ports, passive radiators and mouths of lines on one face, as the front view shows them: those of the back dashed. */
export function Openings({ drawing, face }: { readonly drawing: CabinetDrawing; readonly face: 'front' | 'back' }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const selection = useWorkbench((s) => s.selection);
  const { pxPerM } = drawing;
  const lean = face === 'front' ? Math.cos((enclosure.wood.frontLeanDeg * Math.PI) / 180) : 1;
  const picked = (kind: string, id: string) => (selection?.kind === kind && selection.id === id ? '' : undefined);
  const rect = (xM: number, yM: number, widthM: number, heightM: number, radiusPx: number) => {
    const { xPx, yPx } = onFront(drawing, xM, yM);
    const [width, height] = [widthM * pxPerM, heightM * pxPerM * lean];
    return { x: xPx - width / 2, y: yPx - height / 2, width, height, rx: radiusPx, ry: radiusPx };
  };
  return (
    <g className={face === 'back' ? 'cabinet-hidden' : undefined}>
      {enclosure.ports.map((port) => {
        const seat = portSeat(port, enclosure);
        if (seat) return face === 'back' ? <InnerPort key={port.id} drawing={drawing} port={port} /> : null;
        if (port.face !== face) return null;
        const { widthM, heightM } = openingM(port);
        const round = port.shape.kind === 'round' ? (widthM * pxPerM) / 2 : 1.5;
        return openingCentresM(port).map((xM) => (
          <rect
            key={`${port.id} ${xM}`}
            className="cabinet-port"
            data-picked={picked('port', port.id)}
            {...rect(xM, port.yM, widthM, heightM, round)}
          />
        ));
      })}
      {enclosure.passiveRadiators.map((radiator) =>
        radiator.face === face
          ? radiatorPlaces(radiator, enclosure).map(({ xM, yM }) => {
              const { xPx, yPx } = onFront(drawing, xM, yM);
              const moving = Math.min(Math.sqrt(radiator.sdM2 / Math.PI), 0.47 * radiator.outerDiameterM) * pxPerM;
              return (
                <g
                  key={`${radiator.id} ${xM} ${yM}`}
                  className="cabinet-radiator"
                  transform={`translate(${xPx} ${yPx}) scale(1 ${lean})`}
                  data-picked={picked('radiator', radiator.id)}
                >
                  <circle r={(radiator.outerDiameterM / 2) * pxPerM} />
                  <circle r={moving} />
                  <path d={`M${-moving * 0.4},0h${moving * 0.8}M0,${-moving * 0.4}v${moving * 0.8}`} />
                </g>
              );
            })
          : null,
      )}
      {enclosure.lines.map((line) => {
        if (line.end.kind !== 'open' || line.end.face !== face) return null;
        const { widthM, heightM } = lineMouth(line, enclosure);
        return (
          <rect
            key={line.id}
            className="cabinet-port"
            data-picked={picked('duct', line.id)}
            {...rect(line.end.xM, line.end.yM, widthM, heightM, 3)}
          />
        );
      })}
    </g>
  );
}

/** A port between two chambers, upright through their board. */
function InnerPort({ drawing, port }: { readonly drawing: CabinetDrawing; readonly port: Port }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const seat = portSeat(port, enclosure);
  if (!seat) return null;
  return openingCentresM(port).map((xM) => {
    const { xPx, yPx } = onFront(drawing, xM, seat.upM);
    return (
      <g key={xM} transform={`translate(${xPx} ${yPx}) rotate(${seat.towards === 'up' ? -90 : 90})`}>
        <PortTube port={port} halfM={openingM(port).widthM / 2} pxPerM={drawing.pxPerM} />
      </g>
    );
  });
}

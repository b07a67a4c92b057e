import { useWorkbench } from '../../useWorkbench.ts';
import { useWays } from '../useWays.ts';
import { type CabinetDrawing, onFront } from './cabinetDrawing.ts';
import { DriverFront } from './DriverDrawing.tsx';
import { openingCentresM, openingM } from './portFaces.ts';

/** The baffle to scale, with all that is mounted on it. Only the drawing: the handles lie over it. */
export function FrontView({ drawing }: { readonly drawing: CabinetDrawing }) {
  const ways = useWays();
  const ports = useWorkbench((s) => s.project.enclosure.ports);
  const selection = useWorkbench((s) => s.selection);
  const { front, pxPerM } = drawing;
  return (
    <g>
      <text className="cabinet-title" x={front.leftPx + front.widthPx / 2} y={15}>
        front
      </text>
      <rect
        className="cabinet-wood"
        x={front.leftPx}
        y={front.topPx}
        width={front.widthPx}
        height={front.heightPx}
        rx={2}
      />
      {ports
        .filter((port) => port.face === 'front')
        .map((port) => {
          const { widthM, heightM } = openingM(port);
          const picked = selection?.kind === 'port' && selection.id === port.id;
          return openingCentresM(port).map((xM) => {
            const { xPx, yPx } = onFront(drawing, xM, port.yM);
            return (
              <rect
                key={`${port.id} ${xM}`}
                className="cabinet-port"
                data-picked={picked ? '' : undefined}
                x={xPx - (widthM * pxPerM) / 2}
                y={yPx - (heightM * pxPerM) / 2}
                width={widthM * pxPerM}
                height={heightM * pxPerM}
                rx={port.shape.kind === 'round' ? (widthM * pxPerM) / 2 : 1.5}
              />
            );
          });
        })}
      {ways.map((way) => (
        <DriverFront key={way.speakerId} drawing={drawing} way={way} />
      ))}
    </g>
  );
}

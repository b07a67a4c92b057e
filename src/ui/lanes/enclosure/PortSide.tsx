import type { Port } from '../../../core/document/schema.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { type CabinetDrawing, onSide } from './cabinetDrawing.ts';
import { openingM } from './portFaces.ts';

/** A port in the side view: its bore from the face inwards, with the walls that make it. */
export function PortSide({ drawing, port }: { readonly drawing: CabinetDrawing; readonly port: Port }) {
  const depthM = useWorkbench((s) => s.project.enclosure.depthM);
  const picked = useWorkbench((s) => s.selection?.kind === 'port' && s.selection.id === port.id);
  const half = openingM(port).heightM / 2;
  const from = port.face === 'front' ? 0 : Math.max(0, depthM - port.lengthM);
  const to = port.face === 'front' ? port.lengthM : depthM;
  const top = onSide(drawing, from, port.yM + half);
  const bottom = onSide(drawing, to, port.yM - half);
  const wallPx = Math.max(1, port.wallM * drawing.pxPerM);
  const across = bottom.xPx - top.xPx;
  const tall = bottom.yPx - top.yPx;
  return (
    <g data-picked={picked ? '' : undefined}>
      <rect className="cabinet-port-wall" x={top.xPx} y={top.yPx - wallPx} width={across} height={tall + 2 * wallPx} />
      <rect className="cabinet-port" x={top.xPx} y={top.yPx} width={across} height={tall} />
    </g>
  );
}

import { useWorkbench } from '../../useWorkbench.ts';
import type { Way } from '../../waysInOrder.ts';
import { wayColour } from '../wayColour.ts';
import { type CabinetDrawing, onFront, onSide } from './cabinetDrawing.ts';
import { driverSize } from './driverSize.ts';

/** A driver at its place on the front view, in its way's colour. */
export function DriverFront({ drawing, way }: { readonly drawing: CabinetDrawing; readonly way: Way }) {
  const mount = useWorkbench((s) => s.project.enclosure.mounts.find((m) => m.partId === way.speakerId));
  const picked = useWorkbench((s) => s.selection?.kind === 'speaker' && s.selection.id === way.speakerId);
  if (!mount) return null;
  const { radiusM, movingRadiusM } = driverSize(way.driver);
  const { xPx, yPx } = onFront(drawing, mount.xM, mount.yM);
  const moving = movingRadiusM * drawing.pxPerM;
  return (
    <g style={wayColour(way.index)} transform={`translate(${xPx} ${yPx})`} data-picked={picked ? '' : undefined}>
      <circle className="cabinet-driver-frame" r={radiusM * drawing.pxPerM} />
      <circle className="cabinet-driver-edge" r={moving} />
      <circle className="cabinet-driver-cap" r={way.driver?.shape === 'dome' ? moving * 0.88 : moving * 0.34} />
    </g>
  );
}

/** The same driver in the side view: frame, cone and magnet as one outline, as deep as its data sheet says. */
export function DriverSide({ drawing, way }: { readonly drawing: CabinetDrawing; readonly way: Way }) {
  const mount = useWorkbench((s) => s.project.enclosure.mounts.find((m) => m.partId === way.speakerId));
  if (!mount) return null;
  const { radiusM, movingRadiusM } = driverSize(way.driver);
  const at = (behindM: number, aboveM: number) => {
    const { xPx, yPx } = onSide(drawing, behindM, mount.yM + aboveM);
    return `${xPx.toFixed(1)},${yPx.toFixed(1)}`;
  };
  const deep = Math.max(0.004, way.driver?.depthM ?? 0.05);
  const flange = Math.min(0.006, deep);
  const magnet = way.driver?.shape === 'dome' ? radiusM * 0.8 : movingRadiusM * 0.62;
  const waist = way.driver?.shape === 'dome' ? flange : deep * 0.62;
  const upper = [at(0, radiusM), at(flange, radiusM), at(flange, movingRadiusM), at(waist, magnet), at(deep, magnet)];
  const lower = [
    at(deep, -magnet),
    at(waist, -magnet),
    at(flange, -movingRadiusM),
    at(flange, -radiusM),
    at(0, -radiusM),
  ];
  const centre = onSide(drawing, -mount.acousticCentreZM, mount.yM);
  return (
    <g style={wayColour(way.index)}>
      <path className="cabinet-driver-side" d={`M${upper.join('L')}L${lower.join('L')}Z`} />
      <circle className="cabinet-centre" cx={centre.xPx} cy={centre.yPx} r={2.2}>
        <title>{`Acoustic centre of ${way.name}`}</title>
      </circle>
    </g>
  );
}

import { useWorkbench } from '../../../../useWorkbench.ts';
import type { Way } from '../../../../waysInOrder.ts';
import { wayColour } from '../../../wayColour.ts';
import { driverSize } from '../../driverSize.ts';
import { type CabinetDrawing, onFront } from '../cabinetDrawing.ts';
import { DriverProfile } from '../profile/DriverProfile.tsx';
import { driverSeat } from '../shape/driverSeat.ts';

/** The step of a recess about a frame, as it is drawn. */
const PLAY_M = 0.002;

/** A driver at its place on the front view, in its way's colour; one on a board inside is seen from its edge, dashed. */
export function DriverFront({ drawing, way }: { readonly drawing: CabinetDrawing; readonly way: Way }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const picked = useWorkbench((s) => s.selection?.kind === 'speaker' && s.selection.id === way.speakerId);
  const mount = enclosure.mounts.find((m) => m.partId === way.speakerId);
  if (!mount) return null;
  const { pxPerM } = drawing;
  const { radiusM, movingRadiusM } = driverSize(way.driver);
  const seat = driverSeat(mount, enclosure);
  const style = wayColour(way.index);
  if (seat.kind === 'board') {
    const { xPx, yPx } = onFront(drawing, mount.xM, seat.upM);
    const turn = seat.faces === 'up' ? 90 : -90;
    return (
      <g className="cabinet-hidden" style={style} transform={`translate(${xPx} ${yPx}) rotate(${turn})`}>
        <DriverProfile driver={way.driver} wallM={Math.max(seat.boardM, 0.001)} pxPerM={pxPerM} />
      </g>
    );
  }
  const { xPx, yPx } = onFront(drawing, mount.xM, mount.yM);
  const moving = movingRadiusM * pxPerM;
  const foreshortened = Math.cos((enclosure.wood.frontLeanDeg * Math.PI) / 180);
  const isRecessed = (way.driver?.fitting?.recessDepthM ?? 0) > 0;
  return (
    <g
      style={style}
      transform={`translate(${xPx} ${yPx}) scale(1 ${foreshortened})`}
      data-picked={picked ? '' : undefined}
    >
      {isRecessed ? <circle className="cabinet-recess" r={(radiusM + PLAY_M) * pxPerM + 1} /> : null}
      <circle className="cabinet-driver-frame" r={radiusM * pxPerM} />
      <circle className="cabinet-driver-edge" r={moving} />
      <circle className="cabinet-driver-cap" r={way.driver?.shape === 'dome' ? moving * 0.88 : moving * 0.34} />
      {mount.back === 'open' && mount.chamberId === null ? <title>{`${way.name}, open at its back`}</title> : null}
    </g>
  );
}

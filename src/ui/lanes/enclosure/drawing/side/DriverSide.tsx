import { frontSetbackM, thicknessOfM } from '../../../../../core/document/insideSpace.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import type { Way } from '../../../../waysInOrder.ts';
import { wayColour } from '../../../wayColour.ts';
import { driverSize } from '../../driverSize.ts';
import { onSide, type SideDrawing } from '../cabinetDrawing.ts';
import { DriverProfile } from '../profile/DriverProfile.tsx';
import { driverSeat } from '../shape/driverSeat.ts';

/** A driver in the side view, as deep as its data sheet says: square to the front, or on the board between its two chambers. */
export function DriverSide({ drawing, way }: { readonly drawing: SideDrawing; readonly way: Way }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const mount = enclosure.mounts.find((m) => m.partId === way.speakerId);
  if (!mount) return null;
  const { pxPerM } = drawing;
  const seat = driverSeat(mount, enclosure);
  if (seat.kind === 'board') {
    const { xPx, yPx } = onSide(drawing, seat.behindM, seat.upM);
    const reach = driverSize(way.driver).radiusM * pxPerM;
    const front = onSide(drawing, 0, 0).xPx;
    return (
      <g style={wayColour(way.index)}>
        {seat.isPlaced ? null : (
          <path className="cabinet-hidden-edge" d={`M${Math.max(front, xPx - 1.4 * reach)},${yPx}h${2.8 * reach}`} />
        )}
        <g transform={`translate(${xPx} ${yPx}) rotate(${seat.faces === 'up' ? 90 : -90})`}>
          <DriverProfile driver={way.driver} wallM={Math.max(seat.boardM, 0.001)} pxPerM={pxPerM} />
        </g>
        <title>{`${way.name} on the board between its chambers; its depth in the cabinet is not stated`}</title>
      </g>
    );
  }
  const { xPx, yPx } = onSide(drawing, frontSetbackM(enclosure, mount.yM), mount.yM);
  const centre = onSide(drawing, -mount.acousticCentreZM, mount.yM);
  return (
    <g style={wayColour(way.index)}>
      <g transform={`translate(${xPx} ${yPx}) rotate(${enclosure.wood.frontLeanDeg})`}>
        <DriverProfile driver={way.driver} wallM={thicknessOfM(enclosure, 'front')} pxPerM={pxPerM} />
      </g>
      <circle className="cabinet-centre" cx={centre.xPx} cy={centre.yPx} r={2.2}>
        <title>{`Acoustic centre of ${way.name}`}</title>
      </circle>
    </g>
  );
}

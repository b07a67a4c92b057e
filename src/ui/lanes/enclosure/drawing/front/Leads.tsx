import { useWorkbench } from '../../../../useWorkbench.ts';
import type { Way } from '../../../../waysInOrder.ts';
import { useWays } from '../../../useWays.ts';
import { wayColour } from '../../../wayColour.ts';
import { driverSize } from '../../driverSize.ts';
import { type CabinetDrawing, onFront } from '../cabinetDrawing.ts';

/** Thin leads from the drivers' cards, at the left edge, to their places on the front. */
export function Leads({
  drawing,
  leadsPx,
}: {
  readonly drawing: CabinetDrawing;
  /** Height of each way's row, from the top of the drawing, by speaker. */
  readonly leadsPx: ReadonlyMap<string, number>;
}) {
  const ways = useWays();
  return (
    <g className="cabinet-leads">
      {ways.map((way) => (
        <Lead key={way.speakerId} way={way} drawing={drawing} fromPx={leadsPx.get(way.speakerId)} />
      ))}
    </g>
  );
}

function Lead({
  way,
  drawing,
  fromPx,
}: {
  readonly way: Way;
  readonly drawing: CabinetDrawing;
  readonly fromPx: number | undefined;
}) {
  const mount = useWorkbench((s) => s.project.enclosure.mounts.find((m) => m.partId === way.speakerId));
  const lifted = useWorkbench((s) => s.lifted === way.speakerId);
  if (!mount || fromPx === undefined) return null;
  const { xPx, yPx } = onFront(drawing, mount.xM, mount.yM);
  const edgePx = xPx - driverSize(way.driver).radiusM * drawing.pxPerM;
  // Each lead turns at its own place, so that two never run on one line.
  const turnPx = 8 + 5 * way.index;
  const slope = Math.min(drawing.front.leftPx - 6, turnPx + 10);
  return (
    <path
      className="cabinet-lead"
      style={wayColour(way.index)}
      data-lifted={lifted ? '' : undefined}
      d={`M0,${fromPx}H${turnPx}L${slope},${yPx.toFixed(1)}H${edgePx.toFixed(1)}`}
    />
  );
}

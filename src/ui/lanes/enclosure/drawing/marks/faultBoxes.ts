import { frontSetbackM } from '../../../../../core/document/insideSpace.ts';
import type { Enclosure } from '../../../../../core/document/schema.ts';
import type { Way } from '../../../../waysInOrder.ts';
import { driverSize } from '../../driverSize.ts';
import { openingM, portFootprint } from '../../portFaces.ts';
import { type Box, type CabinetDrawing, onFront, onSide } from '../cabinetDrawing.ts';
import { boxAbout } from '../labels/placeLabels.ts';
import { driverSeat } from '../shape/driverSeat.ts';
import { tubePlace } from '../side/tubePlace.ts';
import type { Fault } from './useFaults.ts';

const AROUND_PX = 3;

/** The outlines of a thing with a fault, in the front view and in the side view; null where it is not seen. */
export function faultBoxes(
  { kind, id }: Pick<Fault, 'kind' | 'id'>,
  drawing: CabinetDrawing,
  enclosure: Enclosure,
  ways: readonly Way[],
): { readonly front: Box | null; readonly side: Box | null } {
  const { pxPerM } = drawing;
  const side = drawing.side ? { side: drawing.side, pxPerM } : null;
  const box = (xPx: number, yPx: number, widthM: number, heightM: number) =>
    boxAbout(xPx, yPx, widthM * pxPerM + 2 * AROUND_PX, heightM * pxPerM + 2 * AROUND_PX);
  if (kind === 'port') {
    const port = enclosure.ports.find((one) => one.id === id);
    if (!port) return { front: null, side: null };
    const { halfWidthM, halfHeightM } = portFootprint(port);
    const at = onFront(drawing, port.xM, port.yM);
    const isSeen = port.face === 'front' && port.toChamberId === null;
    const place = side ? tubePlace(side, port, enclosure) : null;
    const thick = openingM(port).heightM + 2 * port.wallM;
    return {
      front: isSeen ? box(at.xPx, at.yPx, 2 * halfWidthM, 2 * halfHeightM) : null,
      side: place
        ? box(
            place.middle.xPx,
            place.middle.yPx,
            place.isUpright ? thick : port.lengthM,
            place.isUpright ? port.lengthM : thick,
          )
        : null,
    };
  }
  const mount = enclosure.mounts.find(({ partId }) => partId === id);
  const way = ways.find(({ speakerId }) => speakerId === id);
  if (!mount || !way || driverSeat(mount, enclosure).kind !== 'front') return { front: null, side: null };
  const { radiusM } = driverSize(way.driver);
  const deepM = way.driver?.depthM ?? radiusM;
  const at = onFront(drawing, mount.xM, mount.yM);
  const beside = side ? onSide(side, frontSetbackM(enclosure, mount.yM) + deepM / 2, mount.yM) : null;
  return {
    front: box(at.xPx, at.yPx, 2 * radiusM, 2 * radiusM),
    side: beside ? box(beside.xPx, beside.yPx, deepM, 2 * radiusM) : null,
  };
}

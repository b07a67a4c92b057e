import { frontSetbackM, thicknessOfM } from '../../../../../core/document/insideSpace.ts';
import type { Enclosure } from '../../../../../core/document/schema.ts';
import type { Way } from '../../../../waysInOrder.ts';
import { openingM } from '../../portFaces.ts';
import { type Box, onSide, type SideDrawing } from '../cabinetDrawing.ts';
import { driverBody } from '../profile/driverBody.ts';
import { braceBoards } from '../shape/braceBoards.ts';
import { driverSeat } from '../shape/driverSeat.ts';
import { radiatorPlaces } from '../shape/radiatorPlaces.ts';
import { tubePlace } from '../side/tubePlace.ts';
import { boxAbout } from './placeLabels.ts';

/** Depth that a passive radiator is drawn with, mass included, as a share of its diameter. */
const RADIATOR_SHARE = 0.22;

/** What in the side view words should not lie on: drivers, tubes and braces, each as the box round it. */
export function bodiesInSide(drawing: SideDrawing, enclosure: Enclosure, ways: readonly Way[]): Box[] {
  const { pxPerM } = drawing;
  const drivers = ways.flatMap((way): Box[] => {
    const mount = enclosure.mounts.find(({ partId }) => partId === way.speakerId);
    if (!mount) return [];
    const seat = driverSeat(mount, enclosure);
    const { magnet, sections } = driverBody(way.driver, thicknessOfM(enclosure, 'front'));
    const halfPx = (sections[0]?.radiusM ?? 0) * pxPerM;
    const deepPx = magnet.toM * pxPerM;
    if (seat.kind === 'board') {
      const { xPx, yPx } = onSide(drawing, seat.behindM, seat.upM);
      return [
        {
          leftPx: xPx - halfPx,
          topPx: seat.faces === 'up' ? yPx : yPx - deepPx,
          widthPx: 2 * halfPx,
          heightPx: deepPx,
        },
      ];
    }
    const { xPx, yPx } = onSide(drawing, frontSetbackM(enclosure, mount.yM), mount.yM);
    return [{ leftPx: xPx, topPx: yPx - halfPx, widthPx: deepPx + 2, heightPx: 2 * halfPx }];
  });
  const tubes = enclosure.ports.map((port): Box => {
    const { middle, isUpright } = tubePlace(drawing, port, enclosure);
    const long = port.lengthM * pxPerM;
    const wide = (openingM(port).heightM + 2 * port.wallM) * pxPerM;
    return isUpright ? boxAbout(middle.xPx, middle.yPx, wide, long) : boxAbout(middle.xPx, middle.yPx, long, wide);
  });
  const boards = braceBoards(enclosure).flatMap(({ lies, wood }): Box[] => {
    if (lies === 'lengthwise') return [];
    const a = onSide(drawing, wood.behindM[0], wood.upM[1]);
    const b = onSide(drawing, wood.behindM[1], wood.upM[0]);
    return [{ leftPx: a.xPx, topPx: a.yPx, widthPx: b.xPx - a.xPx, heightPx: b.yPx - a.yPx }];
  });
  const radiators = enclosure.passiveRadiators.flatMap((radiator) =>
    radiatorPlaces(radiator, enclosure).map(({ yM }): Box => {
      const isFront = radiator.face === 'front';
      const { xPx, yPx } = onSide(drawing, isFront ? frontSetbackM(enclosure, yM) : enclosure.depthM, yM);
      const deepPx = RADIATOR_SHARE * radiator.outerDiameterM * pxPerM;
      return boxAbout(isFront ? xPx + deepPx / 2 : xPx - deepPx / 2, yPx, deepPx, radiator.outerDiameterM * pxPerM);
    }),
  );
  return [...drivers, ...tubes, ...radiators, ...boards];
}

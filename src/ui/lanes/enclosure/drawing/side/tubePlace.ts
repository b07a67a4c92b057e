import { frontSetbackM } from '../../../../../core/document/insideSpace.ts';
import type { Enclosure, Port } from '../../../../../core/document/schema.ts';
import { openingM } from '../../portFaces.ts';
import { onSide, type Point, type SideDrawing } from '../cabinetDrawing.ts';
import { portSeat } from '../shape/portSeat.ts';
import { portEndHeightPx } from './portEndHeight.ts';

export interface TubePlace {
  /** Where its bore begins, and how the way inwards is turned from the way to the right, degrees clockwise. */
  readonly mouth: Point;
  readonly turnDeg: number;
  readonly middle: Point;
  readonly end: Point;
  /** From its axis to what is clear of walls and handle. */
  readonly halfPx: number;
  readonly isUpright: boolean;
}

/** A straight port in the side view: square to the front, the back or the board that it goes through. */
export function tubePlace(drawing: SideDrawing, port: Port, enclosure: Enclosure): TubePlace {
  const seat = portSeat(port, enclosure);
  const turnDeg = seat ? (seat.towards === 'up' ? -90 : 90) : port.face === 'front' ? enclosure.wood.frontLeanDeg : 180;
  const mouth = seat
    ? onSide(drawing, seat.behindM, seat.upM)
    : onSide(drawing, port.face === 'front' ? frontSetbackM(enclosure, port.yM) : enclosure.depthM, port.yM);
  const along = (m: number): Point => ({
    xPx: mouth.xPx + Math.cos((turnDeg * Math.PI) / 180) * m * drawing.pxPerM,
    yPx: mouth.yPx + Math.sin((turnDeg * Math.PI) / 180) * m * drawing.pxPerM,
  });
  const wallsPx = (openingM(port).heightM / 2 + port.wallM) * drawing.pxPerM + 1;
  return {
    mouth,
    turnDeg,
    middle: along(port.lengthM / 2),
    end: along(port.lengthM),
    halfPx: Math.max(wallsPx, portEndHeightPx(drawing, port) / 2),
    isUpright: seat !== null,
  };
}

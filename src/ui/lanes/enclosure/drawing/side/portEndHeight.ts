import type { Port } from '../../../../../core/document/schema.ts';
import { openingM } from '../../portFaces.ts';
import type { CabinetDrawing } from '../cabinetDrawing.ts';

const LEAST_HEIGHT_PX = 28;
const AROUND_PX = 8;

/** Height of the handle at a port's inner end: a little more than the bore, never too small for a finger. */
export const portEndHeightPx = (drawing: Pick<CabinetDrawing, 'pxPerM'>, port: Port): number =>
  Math.max(LEAST_HEIGHT_PX, openingM(port).heightM * drawing.pxPerM + AROUND_PX);

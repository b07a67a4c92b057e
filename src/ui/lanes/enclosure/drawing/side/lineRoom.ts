import { clearHeights, thicknessOfM } from '../../../../../core/document/insideSpace.ts';
import type { Enclosure, Line } from '../../../../../core/document/schema.ts';
import { sideChambers } from '../../sideChambers.ts';
import { type Box, onSide, type SideDrawing } from '../cabinetDrawing.ts';
import { innerFrontM } from '../shape/innerFront.ts';

const LEAST_PX = 44;

/** Where the symbol of a line is drawn: in the tallest space that no chamber takes, else in the rear half of its own chamber. */
export function lineRoom(drawing: SideDrawing, line: Line, enclosure: Enclosure): Box {
  const clear = clearHeights(enclosure);
  const chambers = sideChambers(enclosure).sort((a, b) => a.bottomM - b.bottomM);
  const gaps: (readonly [number, number])[] = [];
  let floor = clear.bottomM;
  for (const { bottomM, topM } of chambers) {
    gaps.push([floor, bottomM]);
    floor = Math.max(floor, topM);
  }
  gaps.push([floor, clear.topM]);
  const [bottomM, topM] = gaps.reduce((best, gap) => (gap[1] - gap[0] > best[1] - best[0] ? gap : best));
  const own = chambers.find(({ id }) => id === line.chamberId);
  const backM = enclosure.depthM - thicknessOfM(enclosure, 'back');
  const box = (fromM: number, lowM: number, highM: number): Box => {
    const a = onSide(drawing, fromM, highM);
    const b = onSide(drawing, backM, lowM);
    return { leftPx: a.xPx, topPx: a.yPx, widthPx: Math.max(1, b.xPx - a.xPx), heightPx: Math.max(1, b.yPx - a.yPx) };
  };
  if ((topM - bottomM) * drawing.pxPerM >= LEAST_PX || !own) return box(innerFrontM(enclosure, topM), bottomM, topM);
  return box((own.frontM + own.backM) / 2, own.bottomM, own.topM);
}

import { portDisplacementM3 } from '../../acoustics/port/portDisplacement.ts';
import type { CabinetPort, PortWall } from './cabinet.ts';

export interface PortBoard {
  readonly side: PortWall;
  readonly lengthM: number;
  readonly widthM: number;
  readonly thicknessM: number;
}

/** Boards of a slot port on the sides that no wall of the cabinet makes; those above and below reach over those at the sides. */
export function portBoards({ shape, lengthM }: CabinetPort, wallThicknessM: number): readonly PortBoard[] {
  if (shape.kind === 'round' || shape.wallM === 0) return [];
  const { widthM, heightM, wallM, sharedWalls } = shape;
  const own = (side: PortWall): boolean => !sharedWalls.includes(side);
  const overM = wallM * [own('left'), own('right')].filter(Boolean).length;
  return (['top', 'bottom', 'left', 'right'] as const).filter(own).map((side) => ({
    side,
    lengthM: lengthM - wallThicknessM,
    widthM: side === 'top' || side === 'bottom' ? widthM + overM : heightM,
    thicknessM: wallM,
  }));
}

/** Space that a port takes from its chamber, bore and walls, behind the wall that it goes through, m³. */
export function portSpaceM3(port: CabinetPort, wallThicknessM: number): number {
  const insideM = Math.max(0, port.lengthM - wallThicknessM);
  if (port.shape.kind === 'round')
    return portDisplacementM3({ kind: 'round', diameterM: port.shape.boreDiameterM }, port.shape.wallM, insideM);
  const boards = portBoards(port, wallThicknessM).reduce(
    (sum, b) => sum + Math.max(0, b.lengthM) * b.widthM * b.thicknessM,
    0,
  );
  return port.shape.widthM * port.shape.heightM * insideM + boards;
}

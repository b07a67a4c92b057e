import { type Cabinet, type PortWall, WALLS, type Wall } from '../panels/cabinet.ts';
import type { InnerSpaces } from '../panels/chamberSpaces.ts';
import { outerSpaces, pointOnWall, type Shell } from '../panels/shell.ts';
import { along, depthOf, dot, type HalfSpace } from '../solid/index.ts';
import { type FlatShape, halfSizes } from './body.ts';
import { flatGapM } from './gaps.ts';
import { type Interference, interference, TOUCHING_M } from './interference.ts';

interface Hole {
  readonly id: string;
  readonly kind: 'mount' | 'port';
  readonly wall: Wall;
  readonly chamberId: string;
  readonly through: FlatShape;
  /** With the frame. */
  readonly covered: FlatShape;
  readonly sharedWalls: readonly PortWall[];
}

function holesOf(cabinet: Cabinet): Hole[] {
  const disc = (at: { acrossM: number; upM: number }, diameterM: number): FlatShape => ({
    acrossM: at.acrossM,
    upM: at.upM,
    size: { radiusM: diameterM / 2 },
  });
  const drivers = cabinet.drivers.map(({ id, chamberId, at, ...driver }): Hole => {
    const coveredM = Math.max(driver.frameDiameterM, driver.recessDepthM > 0 ? driver.recessDiameterM : 0);
    return {
      id,
      kind: 'mount',
      wall: at.wall,
      chamberId,
      through: disc(at, driver.cutOutDiameterM),
      covered: disc(at, coveredM),
      sharedWalls: [],
    };
  });
  const ports = cabinet.ports.map(({ id, chamberId, at, shape }): Hole => {
    const through: FlatShape =
      shape.kind === 'round'
        ? disc(at, shape.boreDiameterM + 2 * shape.wallM)
        : { acrossM: at.acrossM, upM: at.upM, size: { halfAcrossM: shape.widthM / 2, halfUpM: shape.heightM / 2 } };
    const sharedWalls = shape.kind === 'round' ? [] : shape.sharedWalls;
    return { id, kind: 'port', wall: at.wall, chamberId, through, covered: through, sharedWalls };
  });
  return [...drivers, ...ports];
}

/** Least distance of a shape on a plane of the wall from the faces round it, m; null where a face lies in front of the whole plane. */
function marginM(
  shape: FlatShape,
  depthM: number,
  wall: Wall,
  spaces: readonly HalfSpace[],
  shell: Shell,
): number | null {
  const own = shell.walls[wall];
  const centre = along(pointOnWall(shell, { wall, acrossM: shape.acrossM, upM: shape.upM }), own.outer.normal, -depthM);
  const [a, b] = halfSizes(shape.size);
  let least = Number.POSITIVE_INFINITY;
  for (const space of spaces) {
    const facing = dot(space.normal, own.outer.normal);
    const depth = depthOf(space, centre);
    const sideways = Math.sqrt(Math.max(0, 1 - facing * facing));
    if (sideways < 1e-9) {
      if (depth < -TOUCHING_M) return null;
      continue;
    }
    const reach =
      'radiusM' in shape.size
        ? shape.size.radiusM
        : (Math.abs(dot(space.normal, own.across)) * a + Math.abs(dot(space.normal, own.up)) * b) / sideways;
    least = Math.min(least, depth / sideways - reach);
  }
  return least;
}

/** Cut-outs that leave their panel or their chamber, frames over the edge, and pairs that overlap or leave too thin a web. */
export function surfaceFaults(cabinet: Cabinet, shell: Shell, { chambers }: InnerSpaces, webM: number): Interference[] {
  const found: Interference[] = [];
  const holes = holesOf(cabinet);
  for (const hole of holes) {
    const { id, kind, wall, through, covered } = hole;
    const place = { kind, id } as const;
    const shared = hole.sharedWalls.map((name) => shell.walls[name].inner);
    const faces = chambers
      .get(hole.chamberId)!
      .filter((face) => !shared.includes(face) && face !== shell.walls[wall].inner);
    const insideM = marginM(through, shell.walls[wall].thicknessM, wall, faces, shell);
    const names = { name: id, wall };
    if (insideM === null)
      found.push(
        interference('fault', 'build.chamber-not-behind', place, 'move', 0, 0, { ...names, chamber: hole.chamberId }),
      );
    else if (insideM < -TOUCHING_M)
      found.push(interference('fault', 'build.cutout-in-edge', place, 'move', insideM, 0, names));
    else if (insideM < webM - TOUCHING_M)
      found.push(interference('warning', 'build.web-at-edge', place, 'move', insideM, webM, names));
    const overM = marginM(covered, 0, wall, outerSpaces(shell), shell);
    if (overM !== null && overM < -TOUCHING_M)
      found.push(interference('fault', 'build.frame-over-edge', place, 'move', overM, 0, names));
  }
  for (const wall of WALLS) {
    const here = holes.filter((hole) => hole.wall === wall);
    here.forEach((a, i) => {
      for (const b of here.slice(i + 1)) {
        const place = { kind: a.kind, id: a.id } as const;
        const names = { name: a.id, other: b.id, wall };
        const gapM = flatGapM(a.through, b.through);
        const framesM = flatGapM(a.covered, b.covered);
        if (gapM < -TOUCHING_M)
          found.push(interference('fault', 'build.cutouts-overlap', place, 'move', gapM, 0, names));
        else if (framesM < -TOUCHING_M)
          found.push(interference('fault', 'build.frames-overlap', place, 'move', framesM, 0, names));
        else if (gapM < webM - TOUCHING_M)
          found.push(interference('warning', 'build.web-too-thin', place, 'move', gapM, webM, names));
      }
    });
  }
  return found;
}

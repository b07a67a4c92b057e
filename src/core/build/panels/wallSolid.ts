import { beyond, type HalfSpace, halfSpace, insetBy, unionVolume, type Vector, volumeOf } from '../solid/index.ts';
import type { Cabinet, Wall } from './cabinet.ts';
import { jointBetween, neighboursOf, throughOf } from './jointRules.ts';
import type { Shell } from './shell.ts';

/** What limits a wall where it meets another. */
export function edgeSpace(cabinet: Cabinet, shell: Shell, wall: Wall, other: Wall): HalfSpace {
  const joint = jointBetween(cabinet, wall, other);
  const [own, next] = [shell.walls[wall], shell.walls[other]];
  if (joint.kind === 'mitre') {
    // Deeper under the other's outer face than under one's own, both as a share of the thickness.
    const normal = own.outer.normal.map(
      (_, i) => next.outer.normal[i]! / next.thicknessM - own.outer.normal[i]! / own.thicknessM,
    );
    return halfSpace(
      normal as unknown as Vector,
      next.outer.offsetM / next.thicknessM - own.outer.offsetM / own.thicknessM,
    );
  }
  if (throughOf(joint) === wall) return next.outer;
  return insetBy(next.inner, joint.kind === 'rebate' ? -joint.depthM : 0);
}

/** The board of a wall before steps are cut into it: a convex solid. */
export const wallSpaces = (cabinet: Cabinet, shell: Shell, wall: Wall): HalfSpace[] => [
  shell.walls[wall].outer,
  beyond(shell.walls[wall].inner),
  ...neighboursOf(wall).map((other) => edgeSpace(cabinet, shell, wall, other)),
];

/** Walls that end in a step cut into this one. */
export const guestsOf = (cabinet: Cabinet, wall: Wall): Wall[] =>
  neighboursOf(wall).filter((other) => {
    const joint = jointBetween(cabinet, wall, other);
    return joint.kind === 'rebate' && joint.cutInto === wall;
  });

/** Volume that the steps take out of a wall, m³: each guest's share in turn, what two guests share counted for the first. */
export function rebateVolumes(cabinet: Cabinet, shell: Shell, wall: Wall): ReadonlyMap<Wall, number> {
  const own = wallSpaces(cabinet, shell, wall);
  const volumes = new Map<Wall, number>();
  const earlier: HalfSpace[][] = [];
  for (const guest of guestsOf(cabinet, wall)) {
    const step = [...own, ...wallSpaces(cabinet, shell, guest)];
    volumes.set(guest, volumeOf(step) - unionVolume(earlier.map((other) => [...other, ...step])));
    earlier.push(wallSpaces(cabinet, shell, guest));
  }
  return volumes;
}

import { type Problem, problem } from '../../messages/problem.ts';
import { dot } from '../solid/index.ts';
import { type Cabinet, EDGES, type Edge, type Joint, type Wall } from './cabinet.ts';
import type { Shell } from './shell.ts';

const OPPOSITE: Readonly<Record<Wall, Wall>> = {
  front: 'back',
  back: 'front',
  left: 'right',
  right: 'left',
  top: 'bottom',
  bottom: 'top',
};

export const edgeBetween = (a: Wall, b: Wall): Edge => {
  const edge = EDGES.find((name) => name === `${a}-${b}` || name === `${b}-${a}`);
  if (edge === undefined) throw new Error(`${a} and ${b} do not meet.`);
  return edge;
};
export const wallsOf = (edge: Edge): readonly [Wall, Wall] => edge.split('-') as [Wall, Wall];
export const neighboursOf = (wall: Wall): readonly Wall[] =>
  (['left', 'right', 'bottom', 'top', 'front', 'back'] as const).filter(
    (other) => other !== wall && other !== OPPOSITE[wall],
  );
export const jointBetween = (cabinet: Cabinet, a: Wall, b: Wall): Joint => cabinet.joints[edgeBetween(a, b)];
/** The wall that runs to the outside at a joint; null at a mitre, where both do. */
export const throughOf = (joint: Joint): Wall | null =>
  joint.kind === 'mitre' ? null : joint.kind === 'butt' ? joint.through : joint.cutInto;

/** Why the three walls of a corner leave a hole there; null where they do not. */
function cornerFault(cabinet: Cabinet, walls: readonly [Wall, Wall, Wall]): string | null {
  const [a, b, c] = walls;
  const through = [
    throughOf(jointBetween(cabinet, a, b)),
    throughOf(jointBetween(cabinet, b, c)),
    throughOf(jointBetween(cabinet, a, c)),
  ] as const;
  const mitres = through.filter((wall) => wall === null).length;
  if (mitres === 3) return null;
  if (mitres === 2) return 'build.two-mitres-at-corner';
  if (mitres === 0) return new Set(through).size === 3 ? 'build.corner-left-open' : null;
  // The two that are mitred must meet the third alike: both run past it, or both end at it.
  const third = through[0] === null ? c : through[1] === null ? a : b;
  const past = through.filter((wall) => wall !== null).map((wall) => wall === third);
  return past[0] === past[1] ? null : 'build.mitre-ends-unlike';
}

/** Joints that cannot be made: open corners, rebates that are too deep or on an edge that is not square. */
export function jointFaults(cabinet: Cabinet, shell: Shell): Problem[] {
  const faults: Problem[] = [];
  for (const edge of EDGES) {
    const joint = cabinet.joints[edge];
    const [a, b] = wallsOf(edge);
    const through = throughOf(joint);
    if (through !== null && through !== a && through !== b) throw new Error(`${through} is not at the edge ${edge}.`);
    if (joint.kind !== 'rebate') continue;
    const place = { kind: 'document', id: edge } as const;
    const thickM = cabinet.thicknessM[joint.cutInto];
    if (!(joint.depthM > 0 && joint.depthM < thickM))
      faults.push(problem('build.rebate-too-deep', place, { edge, depthM: joint.depthM, thicknessM: thickM }));
    if (Math.abs(dot(shell.walls[a].outer.normal, shell.walls[b].outer.normal)) > 1e-9)
      faults.push(problem('build.rebate-on-slope', place, { edge }));
  }
  for (const x of ['left', 'right'] as const)
    for (const y of ['top', 'bottom'] as const)
      for (const z of ['front', 'back'] as const) {
        const code = cornerFault(cabinet, [x, y, z]);
        if (code !== null) faults.push({ code, place: { kind: 'document' }, values: { corner: `${z} ${y} ${x}` } });
      }
  return faults;
}

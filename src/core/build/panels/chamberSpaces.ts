import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { type HalfSpace, type Vector, volumeOf } from '../solid/index.ts';
import { type Axis, type Cabinet, type Range, WHOLE_INSIDE } from './cabinet.ts';
import { innerSpaces, type Shell } from './shell.ts';

const UNIT: Readonly<Record<Axis, Vector>> = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };
export const unitOf = (axis: Axis): Vector => UNIT[axis];

/** All points between two coordinates on an axis: first the upper face, then the lower. */
export const slab = (axis: Axis, [lowM, highM]: Range): readonly [HalfSpace, HalfSpace] => {
  const [x, y, z] = UNIT[axis];
  return [
    { normal: [x, y, z], offsetM: highM },
    { normal: [-x, -y, -z], offsetM: -lowM },
  ];
};

/** The convex solid of every chamber by its name, and of every divider by its id. */
export interface InnerSpaces {
  readonly chambers: ReadonlyMap<string, readonly HalfSpace[]>;
  readonly dividers: ReadonlyMap<string, readonly HalfSpace[]>;
}

/** Parts the inside by the dividers in their order. Returns `build.unknown-space` or `build.divider-outside`. */
export function chamberSpaces(cabinet: Cabinet, shell: Shell): Result<InnerSpaces> {
  const chambers = new Map<string, readonly HalfSpace[]>([[WHOLE_INSIDE, innerSpaces(shell)]]);
  const dividers = new Map<string, readonly HalfSpace[]>();
  for (const { id, parts, axis, atM, thicknessM, below, above } of cabinet.dividers) {
    const space = chambers.get(parts);
    if (space === undefined)
      return fail(problem('build.unknown-space', { kind: 'document', id }, { name: parts, part: id }));
    const [upper, lower] = slab(axis, [atM, atM + thicknessM]);
    const low = [...space, { normal: upper.normal, offsetM: atM }];
    const high = [...space, { normal: lower.normal, offsetM: -(atM + thicknessM) }];
    if (!(thicknessM > 0) || !(volumeOf(low) > 1e-9) || !(volumeOf(high) > 1e-9))
      return fail(problem('build.divider-outside', { kind: 'document', id }, { part: id, name: parts, atM }));
    chambers.delete(parts);
    dividers.set(id, [...space, upper, lower]);
    chambers.set(below, low);
    chambers.set(above, high);
  }
  const named = [...cabinet.braces, ...cabinet.drivers, ...cabinet.ports, ...cabinet.contents];
  const lost = named.find(({ chamberId }) => !chambers.has(chamberId));
  if (lost !== undefined)
    return fail(
      problem('build.unknown-space', { kind: 'document', id: lost.id }, { name: lost.chamberId, part: lost.id }),
    );
  return succeed({ chambers, dividers });
}

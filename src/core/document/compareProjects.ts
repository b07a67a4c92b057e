import type { Place } from '../messages/problem.ts';
import type { Design } from './design.ts';

export type ComparedValue = string | number | boolean | null;

/** One thing in which two designs differ. `field` is a path inside the place; '' means that the thing itself is new or gone. */
export interface Difference {
  readonly place: Place;
  readonly field: string;
  /** null: not there, or not given. */
  readonly before: ComparedValue;
  readonly after: ComparedValue;
}

/**
 * What differs between two designs (projects or kept states), in the order of the document: scene, drivers, enclosure,
 * circuit. Things are matched by id; values are SI. Empty when both are alike.
 * @example compareProjects(project.snapshots[0], project)
 */
export function compareProjects(before: Design, after: Design): readonly Difference[] {
  const { amplifiers: channelsBefore, ...chainBefore } = before.chain;
  const { amplifiers: channelsAfter, ...chainAfter } = after.chain;
  const { chambers: _c, ports: _p, mounts: _m, ...sizeBefore } = before.enclosure;
  const { chambers: _d, ports: _q, mounts: _n, ...sizeAfter } = after.enclosure;
  return [
    ...fields({ kind: 'field', field: 'air' }, before.air, after.air),
    ...fields({ kind: 'field', field: 'chain' }, chainBefore, chainAfter),
    ...fields({ kind: 'field', field: 'listening' }, before.listening, after.listening),
    ...things('driver', before.drivers, after.drivers, byId),
    ...fields({ kind: 'field', field: 'enclosure' }, sizeBefore, sizeAfter),
    ...things('chamber', before.enclosure.chambers, after.enclosure.chambers, byId),
    ...things('port', before.enclosure.ports, after.enclosure.ports, byId),
    ...things('mount', before.enclosure.mounts, after.enclosure.mounts, (mount) => mount.partId),
    ...things('part', before.network.parts, after.network.parts, byId),
    ...things('part', channelsBefore, channelsAfter, byId).filter(({ field }) => field !== ''),
  ];
}

const byId = (thing: { readonly id: string }) => thing.id;

function things<T extends object>(
  kind: Place['kind'],
  before: readonly T[],
  after: readonly T[],
  idOf: (thing: T) => string,
): Difference[] {
  if (before === after) return [];
  const was = new Map(before.map((thing) => [idOf(thing), thing]));
  const is = new Map(after.map((thing) => [idOf(thing), thing]));
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((id): Difference[] => {
    const place = { kind, id };
    const [a, b] = [was.get(id), is.get(id)];
    if (a && b) return fields(place, a, b);
    return [{ place, field: '', before: a ? nameOf(a, id) : null, after: b ? nameOf(b, id) : null }];
  });
}

const nameOf = (thing: object, id: string): string =>
  'name' in thing && typeof thing.name === 'string' ? thing.name : id;

function fields(place: Place, before: object, after: object): Difference[] {
  if (before === after) return [];
  const [was, is] = [flat(before), flat(after)];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((field) => {
    const [a, b] = [was.get(field) ?? null, is.get(field) ?? null];
    return Object.is(a, b) ? [] : [{ place, field, before: a, after: b }];
  });
}

/** Leaves by path: 'volume.bottomM'. A pair of nodes is one leaf. */
function flat(thing: object, prefix = ''): Map<string, ComparedValue> {
  const leaves = new Map<string, ComparedValue>();
  for (const [key, value] of Object.entries(thing)) {
    const path = `${prefix}${key}`;
    if (Array.isArray(value)) leaves.set(path, value.join(' – '));
    else if (typeof value === 'object' && value !== null) {
      for (const [inner, leaf] of flat(value, `${path}.`)) leaves.set(inner, leaf);
    } else leaves.set(path, value as ComparedValue);
  }
  return leaves;
}

import * as z from 'zod/mini';
import { type Place, type Problem, problem } from '../../messages/problem.ts';
import {
  airSchema,
  chainSchema,
  chamberSchema,
  curveSchema,
  driverSchema,
  enclosureSchema,
  lineSchema,
  listeningSchema,
  most,
  mountSchema,
  type Project,
  partSchema,
  passiveRadiatorSchema,
  portSchema,
  projectSchema,
  snapshotSchema,
  woodSchema,
} from '../schema.ts';
import { crossReferences } from './crossReferences.ts';
import { curveFlaws } from './curveFlaws.ts';
import { shapeProblems } from './shapeProblems.ts';
import { withNames } from './withNames.ts';

const { widthM, heightM, depthM, panelM } = enclosureSchema.shape;
const enclosureSizes = z.object({ widthM, heightM, depthM, panelM });
const { name, notes } = projectSchema.shape;

/**
 * What an edit did that the document does not allow: values of the things it changed, and everything that refers to
 * something else. Only things that are not identical to before are looked at, so the cost follows the edit.
 */
export function changeProblems(before: Project, after: Project): readonly Problem[] {
  const values = [...sceneProblems(before, after), ...thingProblems(before, after), ...countProblems(after)];
  return values.length > 0 ? values.map((flaw) => withNames(flaw, after)) : crossReferences(after);
}

function sceneProblems(before: Project, after: Project): readonly Problem[] {
  const scene: readonly [z.ZodMiniType, unknown, unknown, string][] = [
    [name, before.name, after.name, 'name'],
    [notes, before.notes, after.notes, 'notes'],
    [airSchema, before.air, after.air, 'air'],
    [listeningSchema, before.listening, after.listening, 'listening'],
    [chainSchema, before.chain, after.chain, 'chain'],
    [enclosureSizes, before.enclosure, after.enclosure, 'enclosure'],
  ];
  return scene.flatMap(([schema, was, is, field]) =>
    was === is ? [] : shapeProblems(schema, is, { kind: 'field', field }),
  );
}

function thingProblems(before: Project, after: Project): readonly Problem[] {
  const { enclosure: was } = before;
  const { enclosure: is } = after;
  return [
    ...changed(before.network.parts, after.network.parts, partSchema, ({ id }) => ({ kind: 'part', id })),
    ...changed(before.drivers, after.drivers, driverSchema, ({ id }) => ({ kind: 'driver', id })),
    ...changed(was.chambers, is.chambers, chamberSchema, ({ id }) => ({ kind: 'chamber', id })),
    ...changed(was.ports, is.ports, portSchema, ({ id }) => ({ kind: 'port', id })),
    ...changed(was.passiveRadiators, is.passiveRadiators, passiveRadiatorSchema, ({ id }) => ({
      kind: 'radiator',
      id,
    })),
    ...changed(was.lines, is.lines, lineSchema, ({ id }) => ({ kind: 'duct', id })),
    ...(was.wood === is.wood ? [] : shapeProblems(woodSchema, is.wood, { kind: 'field', field: 'enclosure.wood' })),
    ...changed(was.mounts, is.mounts, mountSchema, ({ partId: id }) => ({ kind: 'mount', id })),
    ...changed(before.curves, after.curves, curveSchema, ({ id }) => ({ kind: 'curve', id }), curveFlaws),
    ...changed(before.snapshots, after.snapshots, snapshotSchema, () => ({ kind: 'document' })),
  ];
}

function changed<T>(
  before: readonly T[],
  after: readonly T[],
  schema: z.ZodMiniType,
  place: (thing: T) => Place,
  flaws: (thing: T) => Problem[] = () => [],
): readonly Problem[] {
  if (before === after) return [];
  const known = new Set(before);
  return after.flatMap((thing) => {
    if (known.has(thing)) return [];
    const problems = shapeProblems(schema, thing, place(thing));
    return problems.length > 0 ? problems : flaws(thing);
  });
}

function countProblems(after: Project): readonly Problem[] {
  const { enclosure, network, drivers, curves, snapshots } = after;
  const lists = { parts: network.parts, drivers, curves, snapshots, ...enclosure };
  const counted = [
    'parts',
    'drivers',
    'curves',
    'snapshots',
    'chambers',
    'ports',
    'passiveRadiators',
    'lines',
    'mounts',
  ] as const;
  return counted.flatMap((field) => {
    const found = lists[field].length;
    const place = { kind: 'field', field } as const;
    return found > most[field] ? [problem('document.too-many', place, { field, found, most: most[field] })] : [];
  });
}

import shelf from '../../../../../demo-data/kitchen-shelf/kitchen-shelf.conewright.json';
import lesson from '../../../../../demo-data/port-lesson/port-lesson.conewright.json';
import room from '../../../../../demo-data/reading-room/reading-room.conewright.json';
import type { Chamber, Enclosure, Line, PassiveRadiator, Project } from '../../../../../src/core/document/schema.ts';

export const demos = { room, shelf, lesson } as unknown as Record<'room' | 'shelf' | 'lesson', Project>;

const withEnclosure = (project: Project, changes: Partial<Enclosure>): Project => ({
  ...project,
  opensWith: 'workbench',
  enclosure: { ...project.enclosure, ...changes },
});
const bounds = (chamber: Chamber, id: string, bottomM: number, topM: number): Chamber => ({
  ...chamber,
  id,
  name: `${id} chamber`,
  volume: { kind: 'geometry', bottomM, topM, depthM: null },
});

const box = demos.lesson.enclosure;
const bore = box.ports[0]!;

/** A cone on the board between two chambers, the upper one with a flared port to the front, the lower with a stuffed one to the back. */
export const bandPass = withEnclosure(demos.lesson, {
  heightM: 0.5,
  chambers: [bounds(box.chambers[0]!, 'rear', 0.018, 0.2), bounds(box.chambers[0]!, 'fore', 0.218, 0.482)],
  mounts: [{ ...box.mounts[0]!, chamberId: 'rear', frontChamberId: 'fore', yM: 0.21 }],
  ports: [
    { ...bore, chamberId: 'fore', yM: 0.42, lengthM: 0.16, innerFlareM: 0.012, outerFlareM: 0.012 },
    { ...bore, id: 'P2', chamberId: 'rear', face: 'back', yM: 0.06, lengthM: 0.09, stuffingPaSPerM2: 2000 },
  ],
});

const radiator: PassiveRadiator = {
  id: 'PR1',
  name: 'front radiator',
  chamberId: 'box',
  count: 1,
  sdM2: 0.0092,
  mmsKg: 0.02,
  fsHz: 25,
  qms: 6,
  addedMassKg: 0.01,
  xmaxM: 0.008,
  outerDiameterM: 0.148,
  face: 'front',
  xM: 0,
  yM: 0.085,
};

export const withRadiators = withEnclosure(demos.shelf, {
  heightM: 0.42,
  chambers: [bounds(demos.shelf.enclosure.chambers[0]!, 'box', 0.015, 0.405)],
  mounts: demos.shelf.enclosure.mounts.map((mount, k) => ({ ...mount, yM: k === 0 ? 0.36 : 0.24 })),
  passiveRadiators: [
    radiator,
    { ...radiator, id: 'PR2', name: 'rear pair', count: 2, face: 'back', outerDiameterM: 0.13 },
  ],
});

/** Leaning, narrowing, single panels of their own, a brace of each kind. */
export const leaning = withEnclosure(demos.room, {
  depthM: 0.36,
  wood: {
    ...demos.room.enclosure.wood,
    frontM: 0.025,
    topM: 0.03,
    frontLeanDeg: 8,
    backWidthM: 0.2,
    braces: [
      { id: 'b1', chamberId: 'low', lies: 'level', atM: 0.36, thicknessM: 0.018, openShare: 0.4 },
      { id: 'b2', chamberId: 'low', lies: 'across', atM: 0.2, thicknessM: 0.018, openShare: 0.5 },
      { id: 'b3', chamberId: 'low', lies: 'lengthwise', atM: 0.05, thicknessM: 0.018, openShare: 0 },
    ],
  },
});

const line: Line = {
  id: 'T1',
  name: 'the line',
  chamberId: 'box',
  lengthM: 2.1,
  startAreaM2: 0.02,
  endAreaM2: 0.012,
  filling: null,
  end: { kind: 'open', face: 'front', xM: 0, yM: 0.1 },
};

export const withLine = withEnclosure(demos.lesson, {
  heightM: 0.9,
  chambers: [bounds(box.chambers[0]!, 'box', 0.6, 0.882)],
  mounts: [{ ...box.mounts[0]!, yM: 0.74 }],
  ports: [],
  lines: [line],
});

export const openMid = withEnclosure(demos.room, {
  chambers: demos.room.enclosure.chambers.slice(0, 1),
  mounts: demos.room.enclosure.mounts.map((mount) =>
    mount.partId === 'LS2' ? { ...mount, chamberId: null, back: 'open' } : mount,
  ),
});

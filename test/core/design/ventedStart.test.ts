import { describe, expect, it } from 'vitest';
import { leastPortDiameterM } from '../../../src/core/acoustics/port/leastPortSize.ts';
import { flatVentedAlignment } from '../../../src/core/design/alignments/flatVentedAlignment.ts';
import { evaluateProject } from '../../../src/core/design/evaluateProject.ts';
import { ventedStart } from '../../../src/core/design/ventedStart.ts';
import { applyCommand } from '../../../src/core/document/applyCommand.ts';
import type { Chamber, Project } from '../../../src/core/document/schema.ts';
import { word } from '../../../src/core/messages/word.ts';
import { succeeded } from '../circuit/solved.ts';
import { demoProject } from './demoProject.ts';

const chamberOf = (project: Project, id: string): Chamber => project.enclosure.chambers.find((c) => c.id === id)!;
const withChamber = (project: Project, id: string, changes: Partial<Chamber>): Project =>
  succeeded(applyCommand(project, { type: 'set-chamber', id, changes }));
const withEnclosure = (project: Project, changes: Partial<Project['enclosure']>): Project => ({
  ...project,
  enclosure: { ...project.enclosure, ...changes },
});
const withEntered = (project: Project, id: string, changes: object): Project => ({
  ...project,
  drivers: project.drivers.map((d) => (d.id === id ? { ...d, entered: { ...d.entered, ...changes } } : d)),
});
const startOf = (project: Project, id: string) => {
  const found = ventedStart(project, chamberOf(project, id));
  if (found === null) throw new Error('no offer');
  return succeeded(found);
};
const stated = { kind: 'stated', grossM3: 0.02 } as const;
const room = demoProject('reading-room');
const shelf = demoProject('kitchen-shelf');
const lesson = demoProject('port-lesson');
const roomy = withEnclosure(room, { depthM: 0.342 });
const high = withEnclosure(shelf, { heightM: 0.6 });
/** Two equal drivers, with the displacement of both and the Vas of both. */
const pair: Project = {
  ...withChamber(lesson, 'box', { volume: stated }),
  network: {
    parts: lesson.network.parts.flatMap((p): (typeof p)[] => (p.kind === 'speaker' ? [p, { ...p, id: 'LS2' }] : [p])),
  },
};
const two = withEnclosure(pair, {
  mounts: pair.enclosure.mounts.flatMap((m) => [m, { ...m, partId: 'LS2', yM: 0.12 }]),
});

describe('ventedStart', () => {
  it.each<[string, Project, string, string]>([
    ['a slot port', roomy, 'low', 'top'],
    ['a stated volume', withChamber(room, 'low', { volume: stated }), 'low', 'stated'],
    ['no port, stated', withChamber(shelf, 'box', { volume: stated }), 'box', 'stated'],
    ['no port, by geometry', high, 'box', 'top'],
    ['a round port', withEnclosure(lesson, { heightM: 0.6 }), 'box', 'top'],
    ['two equal drivers', two, 'box', 'stated'],
    [
      'a bottom that must move',
      withChamber(withEnclosure(lesson, { heightM: 0.6 }), 'box', {
        volume: { kind: 'geometry', bottomM: 0.25, topM: 0.582, depthM: null },
      }),
      'box',
      'bottom',
    ],
  ])('lands the wished net volume and tuning within 0.1 %: %s', (_, project, id, by) => {
    const start = startOf(project, id);
    expect(start.sized.by).toBe(by);
    const figures = succeeded(evaluateProject(succeeded(applyCommand(project, start.command)))).keyFigures;
    const chamber = figures.chambers.find((c) => c.id === id)!;
    expect(Math.abs(chamber.netM3 / start.netM3 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(chamber.apparentM3 / start.alignment.volumeM3 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(chamber.tuningHz! / start.alignment.tuningHz - 1)).toBeLessThan(1e-3);
  });

  it('is the alignment for the driver’s own numbers', () => {
    const qts = (4.8 * 0.42) / (4.8 + 0.42);
    const expected = succeeded(flatVentedAlignment({ fsHz: 46, qts, vasM3: 0.022 }, 10));
    const { alignment, ql, qlFrom } = startOf(withChamber(lesson, 'box', { volume: stated }), 'box');
    expect([ql, qlFrom, alignment.kind]).toEqual([10, 'chamber', expected.kind]);
    // A project's air some degrees off changes Vas by well under 1 %.
    expect(Math.abs(alignment.volumeM3 / expected.volumeM3 - 1)).toBeLessThan(0.01);
    expect(alignment.tuningHz).toBeCloseTo(expected.tuningHz, 6);
    expect(startOf(two, 'box').alignment.volumeM3 / alignment.volumeM3).toBeCloseTo(2, 9);
  });

  it('takes 7 for QL where the chamber has no leak set, and says so', () => {
    const start = startOf(withChamber(lesson, 'box', { volume: stated, leak: null }), 'box');
    expect([start.ql, start.qlFrom]).toEqual([7, 'default']);
  });

  it('gives a chamber without a port the next whole 5 mm of tube above the guidance, on the back', () => {
    const start = startOf(withChamber(shelf, 'box', { volume: stated }), 'box');
    const least = leastPortDiameterM(start.alignment.tuningHz, 0.0092 * 0.004);
    if (start.port.shape.kind !== 'round') throw new Error('a slot');
    const { diameterM } = start.port.shape;
    expect(diameterM).toBeGreaterThanOrEqual(least);
    expect(diameterM - least).toBeLessThan(0.005);
    expect(Math.abs(diameterM / 0.005 - Math.round(diameterM / 0.005))).toBeLessThan(1e-9);
    expect([start.port.face, start.diameterFrom]).toEqual(['back', 'stroke']);
    const noStroke: Project = {
      ...shelf,
      drivers: shelf.drivers.map(({ entered: { xmaxM: _gone, ...entered }, ...d }) => ({ ...d, entered })),
    };
    expect(startOf(withChamber(noStroke, 'box', { volume: stated }), 'box').diameterFrom).toBe('start');
  });

  it('keeps the section of a port that is there', () => {
    const { port, diameterFrom } = startOf(roomy, 'low');
    expect([port.shape, diameterFrom]).toEqual([room.enclosure.ports[0]!.shape, null]);
  });

  it.each<[string, Project, string, string]>([
    ['no volume that fits between floor and the chamber above', room, 'low', 'design.no-room'],
    ['a chamber without a port that does not reach the back', room, 'middle', 'design.no-back'],
    [
      'several kinds of port',
      withEnclosure(room, { ports: [room.enclosure.ports[0]!, { ...room.enclosure.ports[0]!, id: 'P2' }] }),
      'low',
      'design.several-ports',
    ],
    [
      'a driver whose Q has no flat vented box',
      withEntered(lesson, 'driver', { qes: 1.4 }),
      'box',
      'acoustics.no-flat-vented',
    ],
    [
      'a stroke that asks for a tube wider than the cabinet',
      withEntered(withChamber(shelf, 'box', { volume: stated }), 'midwoofer', { xmaxM: 0.08 }),
      'box',
      'design.tube-too-wide',
    ],
    [
      'a section too small for the tuning',
      withEnclosure(withChamber(lesson, 'box', { volume: stated }), {
        ports: [{ ...lesson.enclosure.ports[0]!, shape: { kind: 'round', diameterM: 0.008 } }],
      }),
      'box',
      'acoustics.port-too-wide',
    ],
  ])('refuses in words: %s', (_, project, id, code) => {
    const found = ventedStart(project, chamberOf(project, id));
    if (found === null || found.ok) throw new Error(`offered: ${JSON.stringify(found)}`);
    expect(found.problems.map((p) => p.code)).toEqual([code]);
    expect(word(found.problems[0]!).sentence).not.toContain('no description');
  });

  it('has no offer for a chamber without drivers or with two kinds', () => {
    const mounts = shelf.enclosure.mounts.map((m) => ({ ...m, chamberId: 'box' }));
    expect(ventedStart(withEnclosure(shelf, { mounts }), chamberOf(shelf, 'box'))).toBeNull();
    expect(ventedStart(withEnclosure(shelf, { mounts: [] }), chamberOf(shelf, 'box'))).toBeNull();
  });
});

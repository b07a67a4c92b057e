import { describe, expect, it } from 'vitest';
import { deeperCabinetFor } from '../../../src/core/design/deeperCabinetFor.ts';
import { evaluateProject } from '../../../src/core/design/evaluateProject.ts';
import { mapOfChamber } from '../../../src/core/design/mapOfChamber.ts';
import { portRoom } from '../../../src/core/design/portRoom.ts';
import { sealedBoxFor } from '../../../src/core/design/sealedBoxFor.ts';
import { splitOverTwo } from '../../../src/core/design/splitOverTwo.ts';
import { tuningCutShorter } from '../../../src/core/design/tuningCutShorter.ts';
import { ventedBoxFor } from '../../../src/core/design/ventedBoxFor.ts';
import { applyCommand } from '../../../src/core/document/applyCommand.ts';
import type { Command } from '../../../src/core/document/command.ts';
import type { Chamber, Project } from '../../../src/core/document/schema.ts';
import { newProject } from '../../../src/core/document/start/newProject.ts';
import { word } from '../../../src/core/messages/word.ts';
import { succeeded } from '../circuit/solved.ts';
import { demoProject } from './demoProject.ts';

const applied = (project: Project, command: Command): Project => succeeded(applyCommand(project, command));
const figures = (project: Project, id: string) => {
  const { keyFigures, simulation } = succeeded(evaluateProject(project));
  return { ...keyFigures.chambers.find((chamber) => chamber.id === id)!, air: simulation.air };
};
const chamberOf = (project: Project, id: string): Chamber => project.enclosure.chambers.find((c) => c.id === id)!;
const fresh = newProject();
const stated = applied(fresh, {
  type: 'set-chamber',
  id: 'chamber-1',
  changes: { volume: { kind: 'stated', grossM3: 0.02 } },
});
const filled = applied(stated, {
  type: 'set-chamber',
  id: 'chamber-1',
  changes: {
    fillGain: 1,
    filling: {
      material: 'polyester-wadding',
      densityKgPerM3: 10,
      flowResistivityPaSPerM2: null,
      placing: { kind: 'lined', thicknessM: 0.03 },
    },
  },
});
const lesson = demoProject('port-lesson');
/** Sizes land on 10 µm, lengths on 0.1 mm: a thousandth. */
const THOUSANDTH = 2.5;

describe('a box wished on the map', () => {
  it.each([
    ['without a filling', stated],
    ['with a lining, whose gain is computed', filled],
  ])('comes out with its apparent volume and tuning %s', (_how, project) => {
    for (const [volumeM3, tuningHz] of [
      [0.012, 62],
      [0.03, 41],
    ] as const) {
      const box = succeeded(ventedBoxFor(project, chamberOf(project, 'chamber-1'), { volumeM3, tuningHz }));
      const made = figures(applied(project, box.command), 'chamber-1');
      expect(made.apparentM3 / volumeM3).toBeCloseTo(1, THOUSANDTH);
      expect(made.tuningHz! / tuningHz).toBeCloseTo(1, THOUSANDTH);
    }
  });
  it('sealed: takes the ports out and gives their space back', () => {
    const box = succeeded(sealedBoxFor(lesson, chamberOf(lesson, 'box'), 0.01));
    const made = applied(lesson, box.command);
    expect(made.enclosure.ports).toHaveLength(0);
    expect(figures(made, 'box').apparentM3 / 0.01).toBeCloseTo(1, THOUSANDTH);
  });
  it('too large for the cabinet: refused with the bounds in the way, and a deeper cabinet holds it', () => {
    const chamber = chamberOf(fresh, 'chamber-1');
    const wish = { volumeM3: 0.0142, tuningHz: 51.8 };
    const refused = ventedBoxFor(fresh, chamber, wish);
    expect(!refused.ok && refused.problems[0]!.code).toBe('design.no-room');
    const deeper = succeeded(deeperCabinetFor(fresh, chamber, wish));
    const project = applied(fresh, deeper.command);
    expect(project.enclosure.depthM).toBeGreaterThan(fresh.enclosure.depthM);
    expect(project.enclosure.chambers).toEqual(fresh.enclosure.chambers);
    const made = figures(project, 'chamber-1');
    expect(made.apparentM3 / wish.volumeM3).toBeCloseTo(1, THOUSANDTH);
    expect(made.tuningHz! / wish.tuningHz).toBeCloseTo(1, THOUSANDTH);
    const sealed = succeeded(
      deeperCabinetFor(project, chamberOf(project, 'chamber-1'), { volumeM3: 0.02, tuningHz: null }),
    );
    expect(figures(applied(project, sealed.command), 'chamber-1').apparentM3 / 0.02).toBeCloseTo(1, THOUSANDTH);
  });
  it('impossible: sentences, never an exception or NaN', () => {
    const chamber = chamberOf(stated, 'chamber-1');
    for (const wish of [
      { volumeM3: 0, tuningHz: 40 },
      { volumeM3: -1, tuningHz: 40 },
      { volumeM3: 0.01, tuningHz: 0 },
      { volumeM3: 0.01, tuningHz: Number.NaN },
      { volumeM3: Number.NaN, tuningHz: 40 },
      { volumeM3: 0.001, tuningHz: 2000 },
    ]) {
      const box = ventedBoxFor(stated, chamber, wish);
      expect(box.ok, JSON.stringify(wish)).toBe(false);
      if (!box.ok) expect(word(box.problems[0]!).sentence).not.toMatch(/no description|NaN/);
    }
    const long = succeeded(ventedBoxFor(stated, chamber, { volumeM3: 0.004, tuningHz: 25 }));
    expect(long.doubts.map(({ code }) => code)).toContain('design.port-longer-than-box');
  });
});

describe('mapOfChamber', () => {
  it('is drawn from the driver, the losses and the port of the chamber, with what is in series', () => {
    const made = succeeded(mapOfChamber(lesson, chamberOf(lesson, 'box')));
    const { amplifiers, driveV } = lesson.chain;
    expect(made.input.seriesOhm).toBeCloseTo(amplifiers[0]!.outputResistanceOhm + amplifiers[0]!.cableOhm, 12);
    expect(made.input.driveV).toBe(driveV);
    expect(made.input.losses).toEqual({
      leak: chamberOf(lesson, 'box').leak,
      absorption: chamberOf(lesson, 'box').absorption,
      port: lesson.enclosure.ports[0]!.loss,
    });
    expect(made.volumeM3).toBeCloseTo(figures(lesson, 'box').apparentM3, 12);
  });
  it('counts a computed filling as absorption', () => {
    const made = succeeded(mapOfChamber(filled, chamberOf(filled, 'chamber-1')));
    expect(made.input.losses.absorption!.atHz).toBe(50);
    expect(made.input.losses.absorption!.q).toBeLessThan(100);
  });
  it('two equal drivers in series each get half the voltage and half the resistance; in parallel all of it', () => {
    const speaker = fresh.network.parts.find((part) => part.kind === 'speaker')!;
    const pair = (nodes: readonly (readonly [string, string])[]): Project => ({
      ...fresh,
      network: {
        parts: [
          ...fresh.network.parts.filter((part) => part !== speaker),
          ...nodes.map((at, k) => ({ ...speaker, id: `LS${k + 1}`, nodes: at })),
        ],
      },
      enclosure: {
        ...fresh.enclosure,
        mounts: nodes.map((_, k) => ({ ...fresh.enclosure.mounts[0]!, partId: `LS${k + 1}`, yM: 0.1 + 0.1 * k })),
      },
    });
    const [hot, cold] = speaker.nodes;
    const map = (project: Project) => succeeded(mapOfChamber(project, chamberOf(project, 'chamber-1'))).input;
    const series = map(
      pair([
        [hot, 'mid'],
        ['mid', cold],
      ]),
    );
    const parallel = map(pair([speaker.nodes, speaker.nodes]));
    const { driveV } = fresh.chain;
    expect([series.alike, series.driveV, series.seriesOhm]).toEqual([2, driveV / 2, 0.05]);
    expect([parallel.alike, parallel.driveV, parallel.seriesOhm]).toEqual([2, driveV, 0.1]);
  });
  it('says why there is none', () => {
    const radiator = { ...demoProject('kitchen-shelf') };
    const none = mapOfChamber(
      { ...radiator, enclosure: { ...radiator.enclosure, mounts: [] } },
      radiator.enclosure.chambers[0]!,
    );
    expect(!none.ok && none.problems[0]!.code).toBe('design.map-no-driver');
    const stuffed = applied(lesson, {
      type: 'set-port',
      id: lesson.enclosure.ports[0]!.id,
      changes: { stuffingPaSPerM2: 5000 },
    });
    const refused = mapOfChamber(stuffed, chamberOf(stuffed, 'box'));
    expect(!refused.ok && word(refused.problems[0]!).sentence).toContain('a stuffed vent');
  });
});

describe('a port', () => {
  const port = lesson.enclosure.ports[0]!;
  it('cut 5 mm shorter tunes as the document with that port says', () => {
    const { tuningHz, air } = figures(lesson, 'box');
    const shorter = applied(lesson, { type: 'set-port', id: port.id, changes: { lengthM: port.lengthM - 0.005 } });
    const found = tuningCutShorter(lesson, port, 0.005, air.soundSpeedMPerS)!;
    expect(found).toBeCloseTo(figures(shorter, 'box').tuningHz!, 9);
    expect(found).toBeGreaterThan(tuningHz!);
    expect(tuningCutShorter(lesson, port, port.lengthM, air.soundSpeedMPerS)).toBeNull();
  });
  it('split over two keeps section and tuning', () => {
    const { tuningHz, air } = figures(lesson, 'box');
    const made = applied(lesson, splitOverTwo(lesson, port, air.soundSpeedMPerS)!);
    const split = made.enclosure.ports[0]!;
    expect(split.count).toBe(2 * port.count);
    expect(split.lengthM).toBeGreaterThan(port.lengthM);
    // Bores land on 0.1 mm: 0.2 % of their area.
    expect(figures(made, 'box').tuningHz! / tuningHz!).toBeCloseTo(1, THOUSANDTH);
    expect(splitOverTwo(made, { ...split, count: 8 }, air.soundSpeedMPerS)).toBeNull();
  });
  it('has room behind it as the wood leaves', () => {
    const { enclosure } = lesson;
    const room = portRoom(port, enclosure)!;
    expect(room.behindM).toBeCloseTo(enclosure.depthM - enclosure.panelM - port.lengthM, 12);
    expect(portRoom({ ...port, bends: 1 }, enclosure)).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { isobaricPair } from '../../../../src/core/design/alignments/isobaricPair.ts';
import { evaluateProject } from '../../../../src/core/design/evaluateProject.ts';
import { laterChecks } from '../../../../src/core/design/findings/later.ts';
import * as starts from '../../../../src/core/design/starts/index.ts';
import { applyCommand } from '../../../../src/core/document/applyCommand.ts';
import type { Command } from '../../../../src/core/document/command.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { newProject } from '../../../../src/core/document/start/newProject.ts';
import type { Result } from '../../../../src/core/messages/problem.ts';
import { word } from '../../../../src/core/messages/word.ts';
import { succeeded } from '../../circuit/solved.ts';
import { demoProject } from '../demoProject.ts';

type Start = (project: Project, partId: string) => Result<Command>;
const all = Object.entries(starts) as [string, Start][];
const bassOf = { 'reading-room': 'LS3', 'kitchen-shelf': 'LS1', 'port-lesson': 'LS1' } as const;
const applied = (start: Start, project: Project, partId: string): Project =>
  succeeded(applyCommand(project, succeeded(start(project, partId))));
const evaluated = (project: Project) => {
  const found = evaluateProject(project, undefined, laterChecks);
  if (!found.ok) throw new Error(found.problems.map((p) => word(p).sentence).join(' '));
  return found.value;
};

describe('starts', () => {
  it('are all here', () => {
    expect(Object.keys(starts).length).toBe(7);
  });
  it.each(all)('%s leaves a new project that solves, and the next start can follow on it', (_name, start) => {
    const made = applied(start, newProject(), 'LS1');
    const { simulation } = evaluated(made);
    expect(simulation.sum.re.every(Number.isFinite)).toBe(true);
    for (const [, next] of all) {
      const found = next(made, 'LS1');
      // Refusals are sentences; what is carried out solves.
      if (!found.ok) expect(word(found.problems[0]!).sentence).not.toContain('no description');
      else evaluated(succeeded(applyCommand(made, found.value)));
    }
  });
  it.each(Object.entries(bassOf))('leave %s solving, each of them', (name, partId) => {
    const project = demoProject(name as keyof typeof bassOf);
    for (const [, start] of all) {
      const found = start(project, partId);
      if (!found.ok) expect(word(found.problems[0]!).sentence).not.toContain('no description');
      else evaluated(succeeded(applyCommand(project, found.value)));
    }
  });
  it('isobaric: two cones that move as one, as the pair worked out by hand says, in bass', () => {
    const project = newProject();
    const pair = evaluated(applied(starts.isobaricStart, project, 'LS1')).simulation;
    const one = evaluated(project);
    const byHand = {
      ...one.model,
      speakers: one.model.speakers.map((s) => ({ ...s, parameters: isobaricPair(s.parameters, 'parallel') })),
    };
    const at = pair.frequenciesHz.findIndex((hz) => hz > 60);
    const [outer, inner] = pair.speakers;
    // The coupling chamber's spring parts the cones by little: a tenth of a litre beside a box of eight.
    expect(outer!.excursionPeakM[at]! / inner!.excursionPeakM[at]!).toBeCloseTo(1, 1);
    expect(byHand.speakers[0]!.parameters.mmsKg).toBeCloseTo(2 * one.model.speakers[0]!.parameters.mmsKg, 12);
    // Parallel wiring halves what the amplifier sees.
    const ohm = (z: { re: Float64Array; im: Float64Array }, k: number) => Math.hypot(z.re[k]!, z.im[k]!);
    const high = pair.frequenciesHz.findIndex((hz) => hz > 400);
    const ratio = ohm(one.simulation.amplifiers[0]!.impedance, high) / ohm(pair.amplifiers[0]!.impedance, high);
    expect(ratio).toBeCloseTo(2, 1);
  });
  it('band-pass: nothing but the port is heard, and its chamber is tuned to the cone’s resonance on the rear one', () => {
    const project = newProject();
    const { simulation, model } = evaluated(applied(starts.bandPassStart, project, 'LS1'));
    const fcHz = evaluated(project).keyFigures.chambers[0]!.sealed!.fcHz;
    const front = model.chambers.find(({ id }) => id === model.speakers[0]!.frontChamberId)!;
    const port = model.ports[0]!;
    const { soundSpeedMPerS } = model.air;
    const tunedHz = (soundSpeedMPerS / (2 * Math.PI)) * Math.sqrt(port.areaM2 / port.effectiveLengthM / front.volumeM3);
    // Volumes land on 10 ml, lengths on 0.1 mm.
    expect(tunedHz / fcHz).toBeCloseTo(1, 2);
    const at = simulation.frequenciesHz.findIndex((hz) => hz > tunedHz);
    const { re, im } = simulation.sum;
    const heard = simulation.ports[0]!.pressure;
    expect(Math.hypot(re[at]!, im[at]!)).toBeCloseTo(Math.hypot(heard.re[at]!, heard.im[at]!), 9);
  });
  it('passive radiator: keeps the tuning that the port gave', () => {
    const project = demoProject('port-lesson');
    const before = evaluated(project).keyFigures.chambers[0]!.tuningHz!;
    const after = applied(starts.radiatorStart, project, 'LS1');
    expect(after.enclosure.ports).toHaveLength(0);
    const { tuningHz } = evaluated(after).keyFigures.chambers[0]!;
    // Tenths of a gram of what is added.
    expect(tuningHz! / before).toBeCloseTo(1, 2);
  });
  it('open baffle: the chamber goes with its port, and the back is heard', () => {
    const made = applied(starts.openBaffleStart, demoProject('port-lesson'), 'LS1');
    expect(made.enclosure.chambers).toHaveLength(0);
    expect(made.enclosure.ports).toHaveLength(0);
    expect(evaluated(made).model.speakers[0]!.radiation.dipole).toBeDefined();
  });
  it('need a chamber where they stand on one, and say so', () => {
    const bare = applied(starts.openBaffleStart, newProject(), 'LS1');
    for (const start of [starts.isobaricStart, starts.radiatorStart, starts.lineStart, starts.aperiodicStart]) {
      const found = start(bare, 'LS1');
      expect(!found.ok && found.problems[0]!.code).toBe('design.needs-chamber');
    }
  });
});

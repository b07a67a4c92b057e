import { describe, expect, it } from 'vitest';
import { type Evaluated, evaluateProject } from '../../../../src/core/design/evaluateProject.ts';
import { levelBeforeLimits } from '../../../../src/core/design/limits/index.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { levelsDbSpl } from '../../../../src/core/speaker/complexCurve.ts';
import { driven, line, radiator, room, rounded, withOpenings } from '../boxWithOpenings.ts';

const evaluated = (project: Project): Evaluated => {
  const result = evaluateProject(project);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const weak: Project = {
  ...room,
  chain: {
    ...room.chain,
    amplifiers: room.chain.amplifiers.map((amplifier) => ({ ...amplifier, peakVoltageV: 40, peakCurrentA: 6 })),
  },
};
const projects = {
  'as it is': room,
  'a weak amplifier': weak,
  'passive radiators': withOpenings({ passiveRadiators: [{ ...radiator, xmaxM: 0.003 }] }),
  'a line': withOpenings({ lines: [line] }),
  'a rounded port': withOpenings({ ports: [rounded(0.02)] }),
};

describe('greatest level of a document', () => {
  it('is the level at the drive that brings the named limit just to its end', () => {
    const kinds = new Set<string>();
    for (const project of Object.values(projects)) {
      const { levelsDb, gainsDb, bindingBy } = levelBeforeLimits(project, evaluated(project));
      for (const binding of new Set(bindingBy)) {
        if (binding === null) continue;
        const bound = bindingBy.flatMap((by, at) => (by === binding ? [at] : []));
        const i = bound[bound.length >> 1]!;
        kinds.add(binding.kind);
        const result = evaluated(driven(project, project.chain.driveV * 10 ** (gainsDb[i]! / 20)));
        const { simulation } = result;
        expect(levelsDbSpl(simulation.sum)[i]).toBeCloseTo(levelsDb[i]!, 6);
        const own = <T extends { readonly id: string }>(list: readonly T[]): T =>
          list.find(({ id }) => id === binding.id)!;
        const speaker = () => simulation.speakers.find(({ partId }) => partId === binding.id)!;
        const reached = {
          excursion: () => speaker().excursionPeakM[i]!,
          'radiator-excursion': () => own(simulation.passiveRadiators).excursionPeakM[i]!,
          'port-speed': () => Math.SQRT2 * own(simulation.ports).airSpeedRmsMPerS[i]!,
          'mouth-speed': () => Math.SQRT2 * own(simulation.lines).airSpeedRmsMPerS[i]!,
          'coil-heat': () => simulation.partPowersW.get(binding.id)![i]!,
          'rated-power': () => simulation.partPowersW.get(binding.id)![i]!,
          'amplifier-voltage': () => Math.SQRT2 * project.chain.driveV * 10 ** (gainsDb[i]! / 20),
          'amplifier-current': () =>
            Math.SQRT2 *
            Math.hypot(own(simulation.amplifiers).current.re[i]!, own(simulation.amplifiers).current.im[i]!),
        }[binding.kind]();
        expect(reached / binding.limit).toBeCloseTo(1, 9);
      }
    }
    expect([...kinds].sort()).toEqual([
      'amplifier-current',
      'amplifier-voltage',
      'coil-heat',
      'excursion',
      'mouth-speed',
      'port-speed',
      'radiator-excursion',
      'rated-power',
    ]);
  });
  it('holds each opening to the guide value of its own ends', () => {
    const limitOf = (project: Project, kind: string) =>
      levelBeforeLimits(project, evaluated(project)).bindingBy.find((by) => by?.kind === kind)?.limit;
    expect(limitOf(room, 'port-speed')).toBe(17);
    expect(limitOf(projects['a rounded port'], 'port-speed')).toBe(20);
    expect(limitOf(projects['a line'], 'mouth-speed')).toBe(17);
  });
  it('does not depend on the set drive', () => {
    const low = levelBeforeLimits(driven(room, 1), evaluated(driven(room, 1)));
    const high = levelBeforeLimits(driven(room, 20), evaluated(driven(room, 20)));
    low.levelsDb.forEach((level, i) => {
      if (low.bindingBy[i] !== null && high.bindingBy[i] !== null) expect(level).toBeCloseTo(high.levelsDb[i]!, 6);
    });
  });
});

import { expect, test } from 'vitest';
import type { Project } from '../../../../src/core/document/schema.ts';
import { limitBars } from '../../../../src/ui/lanes/driver/limitBars.ts';
import { demo, testStore } from '../plots/openWorkbench.tsx';

const barsOf = (speakerId: string, project: Project, units: 'metric' | 'imperial' = 'metric') => {
  const { evaluation } = testStore(project).getState();
  if (!evaluation) throw new Error('The project has no picture.');
  return limitBars(speakerId, evaluation.keyFigures, project, units);
};
const figuresOf = (project: Project) => {
  const { evaluation } = testStore(project).getState();
  if (!evaluation) throw new Error('The project has no picture.');
  return evaluation.keyFigures;
};
const driven = (driveV: number, project = demo): Project => ({ ...project, chain: { ...project.chain, driveV } });
const withAmplifier = (changes: Partial<Project['chain']['amplifiers'][number]>): Project => ({
  ...demo,
  chain: { ...demo.chain, amplifiers: demo.chain.amplifiers.map((amplifier) => ({ ...amplifier, ...changes })) },
});

test('excursion, coil heat and port air, as the key figures have them', () => {
  const figures = figuresOf(driven(20));
  const [excursion, heat, air] = barsOf('LS1', driven(20));
  const travel = figures.excursions.find(({ partId }) => partId === 'LS1')!;
  expect(excursion?.share).toBe(travel.peakM / 0.006);
  expect(excursion?.amount).toBe(`${(travel.peakM * 1000).toFixed(0)} of 6.0 mm`);
  const coil = figures.coilHeats.find(({ partId }) => partId === 'LS1')!;
  expect(heat?.share).toBeCloseTo((coil.temperatureC - 20) / (180 - 20), 9);
  expect(heat?.amount).toBe(`${coil.temperatureC.toFixed(0)} of 180 °C`);
  expect(air?.share).toBe(figures.portSpeeds[0]!.peakMPerS / 17);
  expect(air?.amount).toContain('guide 17');
  expect(barsOf('LS3', driven(20)).map(({ name }) => name)).toEqual(['excursion', 'coil heat']);
});

test('usual values are said to be usual; stated ones are not', () => {
  const heat = { wire: 'copper', coilKPerW: 4, coilS: 8, magnetKPerW: 2, magnetS: 1800, limitC: 150 } as const;
  const stated: Project = { ...demo, drivers: demo.drivers.map((driver) => ({ ...driver, heat })) };
  const [, usual] = barsOf('LS1', demo);
  expect(usual?.where).toBe('(usual values)');
  expect(usual?.about).toContain('usual values for its size, from memory');
  const [, own] = barsOf('LS1', stated);
  expect(own?.where).not.toContain('usual');
  expect(own?.amount).toContain('of 150 °C');
  // 20 °C is 68 °F, 150 °C is 302 °F.
  expect(barsOf('LS1', driven(0.01, stated), 'imperial')[1]?.amount).toBe('68 of 302 °F');
});

test('the amplifier stands with the lowest way that it feeds, only where it states what it gives', () => {
  expect(barsOf('LS1', demo).map(({ name }) => name)).not.toContain('V1 voltage');
  const project = driven(20, withAmplifier({ peakVoltageV: 40, peakCurrentA: null }));
  const voltage = barsOf('LS1', project).find(({ name }) => name === 'V1 voltage');
  // A sine of 20 V rms peaks at 28.28 V.
  expect(voltage?.share).toBeCloseTo((20 * Math.SQRT2) / 40, 9);
  expect(voltage?.amount).toBe('28 of 40 V');
  expect(barsOf('LS2', project).map(({ name }) => name)).toEqual(['excursion', 'coil heat']);
});

test('an active high-pass lowers the bar of the woofer’s excursion', () => {
  const highPass = { shape: 'linkwitz-riley', order: 4, cornerHz: 80 } as const;
  const [before] = barsOf('LS1', demo);
  const [after] = barsOf('LS1', withAmplifier({ highPass }));
  expect(after?.share).toBeLessThan(0.5 * (before?.share ?? 0));
});

test('which bars there are does not depend on the drive', () => {
  const project = withAmplifier({ peakVoltageV: 40, peakCurrentA: 8 });
  const names = (driveV: number) => barsOf('LS1', driven(driveV, project)).map(({ name }) => name);
  expect(names(0.01)).toEqual(names(60));
  expect(new Set(names(1)).size).toBe(names(1).length);
});

test('passive radiators and lines of the chamber have bars of their own', () => {
  const { chamberId } = demo.enclosure.ports[0]!;
  const project: Project = {
    ...demo,
    enclosure: {
      ...demo.enclosure,
      ports: [],
      passiveRadiators: [
        {
          ...{ id: 'PR1', name: 'back', chamberId, count: 1, sdM2: 0.032, mmsKg: 0.09, fsHz: 20, qms: 8 },
          ...{ addedMassKg: 0.05, xmaxM: null, outerDiameterM: 0.25, face: 'back', xM: 0, yM: 0.3 },
        },
      ],
      lines: [
        {
          ...{ id: 'LN1', name: '', chamberId, lengthM: 0.4, startAreaM2: 0.003, endAreaM2: 0.002, filling: null },
          end: { kind: 'open', face: 'back', xM: 0.05, yM: 0.6 },
        },
      ],
    },
  };
  const bars = barsOf('LS1', project);
  expect(bars.map(({ name }) => name)).toEqual(['excursion', 'coil heat', 'radiator', 'line air']);
  expect(bars[2]).toMatchObject({ share: null, amount: expect.stringMatching(/ mm, no limit$/) });
  expect(bars[3]?.share).toBeCloseTo(figuresOf(project).lineSpeeds[0]!.peakMPerS / 17, 9);
});

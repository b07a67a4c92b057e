import { describe, expect, it } from 'vitest';
import { dipoleLengthM } from '../../../src/core/acoustics/index.ts';
import { applyCommand } from '../../../src/core/document/applyCommand.ts';
import type { Listening, Project } from '../../../src/core/document/schema.ts';
import { newProject } from '../../../src/core/document/start/newProject.ts';
import { readModel } from '../../../src/core/speaker/readModel.ts';
import { simulate } from '../../../src/core/speaker/simulate.ts';

const frequenciesHz = Float64Array.of(20, 25, 30, 200, 1000);

function heard(listening: Partial<Listening>) {
  const start = newProject();
  const { heightM } = start.enclosure;
  const result = applyCommand(start, {
    type: 'together',
    commands: [
      {
        type: 'set-mount',
        partId: 'LS1',
        changes: { chamberId: null, back: 'open', acousticCentreZM: 0, yM: heightM / 2 },
      },
      { type: 'set-listening', changes: { distanceM: 100, heightM: heightM / 2, ...listening } },
    ],
  });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  const project: Project = result.value;
  const read = readModel(project);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const simulation = simulate(read.value.model, frequenciesHz);
  if (!simulation.ok) throw new Error('not solved');
  return { project, model: read.value.model, simulation: simulation.value };
}

describe('a driver on an open baffle', () => {
  it('falls off towards the bass as two sources of opposite sign, the static length of the panel apart', () => {
    const { project, model, simulation } = heard({});
    const { widthM, heightM } = project.enclosure;
    const length = dipoleLengthM({ kind: 'rectangle', widthM, heightM }, { xM: 0, yM: 0 });
    const speaker = simulation.speakers[0]!;
    for (const i of [0, 1, 2]) {
      const omega = 2 * Math.PI * frequenciesHz[i]!;
      const k = omega / model.air.soundSpeedMPerS;
      const flow = Math.hypot(speaker.volumeVelocity.re[i]!, speaker.volumeVelocity.im[i]!);
      // p = ωρU kD/(4πr), the textbook's dipole in full space.
      const wanted = (omega * model.air.densityKgPerM3 * flow * k * length) / (4 * Math.PI * 100);
      const got = Math.hypot(speaker.pressure.re[i]!, speaker.pressure.im[i]!);
      // The cone is no point: its mean length is a little less than the centre's.
      expect(got / wanted).toBeGreaterThan(0.85);
      expect(got / wanted).toBeLessThan(1.001);
    }
  });

  it('is as loud behind as in front with the sign turned, and silent in its own plane', () => {
    const front = heard({}).simulation.sum;
    const behind = heard({ horizontalDeg: 180 }).simulation.sum;
    const beside = heard({ horizontalDeg: 90 }).simulation.sum;
    frequenciesHz.forEach((_, i) => {
      const size = Math.hypot(front.re[i]!, front.im[i]!);
      expect(Math.hypot(behind.re[i]! + front.re[i]!, behind.im[i]! + front.im[i]!) / size).toBeLessThan(1e-3);
      expect(Math.hypot(beside.re[i]!, beside.im[i]!) / size).toBeLessThan(1e-3);
    });
  });

  it('is refused with its back in the open and a chamber behind it', () => {
    const refused = applyCommand(newProject(), { type: 'set-mount', partId: 'LS1', changes: { back: 'open' } });
    expect(refused.ok ? [] : refused.problems.map(({ code }) => code)).toEqual(['document.open-back-in-chamber']);
  });
});

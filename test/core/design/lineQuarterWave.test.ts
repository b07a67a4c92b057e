import { describe, expect, it } from 'vitest';
import { evaluateProject } from '../../../src/core/design/evaluateProject.ts';
import { lineQuarterWaveHz } from '../../../src/core/design/lineQuarterWave.ts';
import type { Line, Project } from '../../../src/core/document/schema.ts';
import { newLine } from '../../../src/core/document/start/newLine.ts';
import { newProject } from '../../../src/core/document/start/newProject.ts';
import { succeeded } from '../circuit/solved.ts';

const project = newProject();
const open: Line = {
  ...newLine(project, 'chamber-1'),
  filling: null,
  lengthM: 2,
  startAreaM2: 0.015,
  endAreaM2: 0.015,
};

describe('lineQuarterWaveHz', () => {
  it('is where a stopped pipe resonates: textbook, 343 m/s over 4 times 2 m', () => {
    expect(lineQuarterWaveHz({ ...open, end: { kind: 'closed' } }, 343)).toBeCloseTo(42.875, 9);
  });
  it('lies at the circuit’s strongest flow out of the mouth for a small chamber before an empty straight line, within 4 %', () => {
    // A chamber of a tenth of a litre: its spring hardly shifts the quarter wave; the cone stops the pipe at its beginning.
    const chamber = {
      ...project.enclosure.chambers[0]!,
      volume: { kind: 'stated' as const, grossM3: 0.0004 },
      leak: null,
      absorption: null,
    };
    const lined: Project = { ...project, enclosure: { ...project.enclosure, chambers: [chamber], lines: [open] } };
    const { simulation } = succeeded(evaluateProject(lined));
    const mouth = simulation.lines[0]!.volumeVelocity;
    const cone = simulation.speakers[0]!.volumeVelocity;
    let best = 0;
    let most = 0;
    simulation.frequenciesHz.forEach((hz, k) => {
      const gain = Math.hypot(mouth.re[k]!, mouth.im[k]!) / Math.hypot(cone.re[k]!, cone.im[k]!);
      if (hz < 60 && gain > most) [most, best] = [gain, hz];
    });
    expect(Math.abs(best / lineQuarterWaveHz(open, simulation.air.soundSpeedMPerS)! - 1)).toBeLessThan(0.04);
  });
  it('is not stated between two chambers', () => {
    expect(lineQuarterWaveHz({ ...open, end: { kind: 'chamber', chamberId: 'b' } }, 343)).toBeNull();
  });
});

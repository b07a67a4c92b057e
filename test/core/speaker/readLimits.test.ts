import { describe, expect, it } from 'vitest';
import { cabinetOf } from '../../../src/core/build/document/index.ts';
import { volumesOf } from '../../../src/core/build/index.ts';
import { evaluateProject } from '../../../src/core/design/evaluateProject.ts';
import { applyCommand } from '../../../src/core/document/applyCommand.ts';
import type { Chamber, Filling, Port, Project } from '../../../src/core/document/schema.ts';
import { airBranches } from '../../../src/core/speaker/airBranches.ts';
import { portBranch } from '../../../src/core/speaker/nodeNames.ts';
import { readModel } from '../../../src/core/speaker/readModel.ts';
import { demoProject } from '../design/demoProject.ts';

const lesson = demoProject('port-lesson');
const [chamber] = lesson.enclosure.chambers;
const [port] = lesson.enclosure.ports;
const withChamber = (changes: Partial<Chamber>): Project => edited({ type: 'set-chamber', id: chamber!.id, changes });
const withPort = (changes: Partial<Port>): Project => edited({ type: 'set-port', id: port!.id, changes });
function edited(command: Parameters<typeof applyCommand>[1], from: Project = lesson): Project {
  const result = applyCommand(from, command);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}
const wool = (densityKgPerM3: number, placing: Filling['placing']): Filling => ({
  material: 'glass-wool',
  densityKgPerM3,
  flowResistivityPaSPerM2: null,
  placing,
});
const codes = (project: Project): string[] => {
  const result = evaluateProject(project);
  return (result.ok ? result.value.findings : result.problems).map(({ code }) => code);
};
const figures = (project: Project) => {
  const result = evaluateProject(project);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value.keyFigures.chambers[0]!;
};

describe('what a cabinet cannot be', () => {
  it('fibre packed into a board is refused, before the air could give power', () => {
    const stuffed = { kind: 'stuffed', share: 1 } as const;
    expect(codes(withChamber({ filling: wool(2600, stuffed) }))).toEqual(['speaker.filling-too-dense']);
    expect(codes(withChamber({ filling: wool(16, stuffed) }))).not.toContain('speaker.filling-too-dense');
  });

  it('stuffing beyond the range of its formula is said', () => {
    const stuffed = { kind: 'stuffed', share: 1 } as const;
    expect(codes(withChamber({ filling: wool(48, stuffed) }))).toContain('finding.heavy-filling');
    const light: Filling = { ...wool(8, stuffed), material: 'polyester-wadding' };
    expect(codes(withChamber({ filling: light }))).not.toContain('finding.heavy-filling');
  });

  it('roundings and bends longer than their port are refused', () => {
    expect(codes(withPort({ outerFlareM: 1 }))).toEqual(['speaker.roundings-too-long']);
    expect(codes(withPort({ innerFlareM: 0.05, outerFlareM: 0.05, lengthM: 0.09 }))).toEqual([
      'speaker.roundings-too-long',
    ]);
    const slot = { shape: { kind: 'slot', widthM: 0.3, heightM: 0.15 }, lengthM: 0.02, bends: 4 } as const;
    expect(codes(withPort(slot))).toContain('speaker.bends-too-long');
    expect(codes(withPort({ innerFlareM: 0.01, outerFlareM: 0.01 }))).not.toContain('speaker.roundings-too-long');
  });
});

describe('a filled chamber', () => {
  it('changes steadily as its lining grows, to where opposite layers meet', () => {
    const gains = Array.from({ length: 40 }, (_, i) => {
      const thicknessM = 0.02 + 0.001 * i;
      const { apparentM3, netM3 } = figures(withChamber({ filling: wool(30, { kind: 'lined', thicknessM }) }));
      return apparentM3 / netM3;
    });
    const steps = gains.slice(1).map((gain, i) => Math.abs(gain - gains[i]!));
    expect(Math.max(...steps)).toBeLessThan(0.02);
  });

  it('leaves the losses of its port and its leak what they were', () => {
    const omegas = Float64Array.of(2 * Math.PI * 50);
    const admittanceOf = (project: Project, id: string) => {
      const read = readModel(project);
      if (!read.ok) throw new Error('not read');
      const branch = airBranches(read.value.model).find((one) => one.id === id);
      if (branch?.kind !== 'admittance') throw new Error('no branch');
      const [re, im] = [new Float64Array(1), new Float64Array(1)];
      branch.admittance(omegas, re, im);
      return [re[0], im[0]];
    };
    const filled = withChamber({ filling: wool(10, { kind: 'stuffed', share: 0.6 }) });
    expect(admittanceOf(filled, portBranch(port!.id))).toEqual(admittanceOf(lesson, portBranch(port!.id)));
    expect(admittanceOf(filled, `${chamber!.id} leak`)).toEqual(admittanceOf(lesson, `${chamber!.id} leak`));
  });

  it('takes the real walls: a thick panel leaves less of them to line', () => {
    const lined = withChamber({ filling: wool(16, { kind: 'lined', thicknessM: 0.02 }) });
    const thick = edited({ type: 'set-wood', changes: { leftM: 0.04, rightM: 0.04 } }, lined);
    const read = (project: Project) => {
      const model = readModel(project);
      if (!model.ok) throw new Error('not read');
      const { placing } = model.value.model.chambers[0]!.filling!;
      return placing.kind === 'lined' ? placing.areaM2 : 0;
    };
    const { widthM, heightM, depthM, panelM } = lesson.enclosure;
    const walls = (width: number) => {
      const [height, depth] = [heightM - 2 * panelM, depthM - 2 * panelM];
      return width * height + 2 * depth * (width + height);
    };
    expect(read(lined)).toBeCloseTo(walls(widthM - 2 * panelM), 9);
    expect(read(thick)).toBeCloseTo(walls(widthM - 0.08), 9);
  });
});

it('a single chamber less deep than its cabinet has a board behind it and the volume that is heard', () => {
  const { volume } = chamber!;
  if (volume.kind !== 'geometry') throw new Error('the lesson has bounds');
  const shallow = withChamber({ volume: { ...volume, depthM: 0.15 } });
  const read = cabinetOf(shallow);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const volumes = volumesOf(read.value.cabinet);
  if (!volumes.ok) throw new Error(JSON.stringify(volumes.problems));
  const built = volumes.value.chambers.find(({ chamberId }) => chamberId === chamber!.id)!;
  expect(built.grossM3 / figures(shallow).grossM3).toBeCloseTo(1, 6);
});

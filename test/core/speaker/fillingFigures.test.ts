import { describe, expect, it } from 'vitest';
import { evaluateProject } from '../../../src/core/design/evaluateProject.ts';
import type { Chamber, Filling, Project } from '../../../src/core/document/schema.ts';
import { newProject } from '../../../src/core/document/start/newProject.ts';
import { apparentVolumeM3 } from '../../../src/core/speaker/apparentVolume.ts';
import { chamberVolume } from '../../../src/core/speaker/chamberVolume.ts';
import { fillingFigures } from '../../../src/core/speaker/fillingFigures.ts';
import { succeeded } from '../circuit/solved.ts';

const stuffed = (share: number, material: Filling['material'] = 'polyester-wadding'): Filling => ({
  material,
  densityKgPerM3: 10,
  flowResistivityPaSPerM2: null,
  placing: { kind: 'stuffed', share },
});
const lined = (thicknessM: number): Filling => ({ ...stuffed(1), placing: { kind: 'lined', thicknessM } });
const filledWith = (filling: Filling | null): { project: Project; chamber: Chamber } => {
  const project = newProject();
  const chamber: Chamber = { ...project.enclosure.chambers[0]!, filling };
  return { project: { ...project, enclosure: { ...project.enclosure, chambers: [chamber] } }, chamber };
};
const figuresOf = (filling: Filling) => {
  const { project, chamber } = filledWith(filling);
  return fillingFigures(project, chamber)!;
};

describe('fillingFigures', () => {
  it.each([stuffed(1), stuffed(0.3), stuffed(0.5, 'glass-wool'), lined(0.02)])(
    'agree with what the circuit is given and the key figures state: %j',
    (filling) => {
      const { project, chamber } = filledWith(filling);
      const { netM3 } = chamberVolume(project, chamber);
      const { model, keyFigures } = succeeded(evaluateProject(project));
      const { volumeGain } = fillingFigures(project, chamber)!;
      expect(model.chambers[0]!.volumeM3).toBeCloseTo(netM3 * volumeGain, 15);
      expect(apparentVolumeM3(project, chamber)).toBeCloseTo(netM3 * volumeGain, 15);
      expect(keyFigures.chambers[0]!.apparentM3).toBeCloseTo(netM3 * volumeGain, 15);
    },
  );
  it('gain lies between none and the isothermal one, more fibre damps more', () => {
    const [some, half, all] = [0.1, 0.5, 1].map((share) => figuresOf(stuffed(share)));
    for (const { volumeGain } of [some!, half!, all!]) {
      expect(volumeGain).toBeGreaterThan(1);
      // γ, the theoretical most.
      expect(volumeGain).toBeLessThan(1.4);
    }
    expect(some!.airQ).toBeGreaterThan(half!.airQ);
    expect(half!.airQ).toBeGreaterThan(all!.airQ);
  });
  it('weighs the filled share at its density', () => {
    const { project, chamber } = filledWith(stuffed(0.25));
    const { netM3 } = chamberVolume(project, chamber);
    expect(fillingFigures(project, chamber)!.massKg).toBeCloseTo(0.25 * netM3 * 10, 12);
  });
  it('takes a stated flow resistivity as it is', () => {
    expect(figuresOf({ ...stuffed(0.5), flowResistivityPaSPerM2: 4321 }).resistivityPaSPerM2).toBe(4321);
  });
  it('says nothing of a stated gain, which the apparent volume takes', () => {
    const { project, chamber } = filledWith(null);
    expect(fillingFigures(project, chamber)).toBeNull();
    const stated = { ...chamber, fillGain: 1.2 };
    expect(apparentVolumeM3(project, stated)).toBeCloseTo(1.2 * chamberVolume(project, stated).netM3, 15);
  });
});

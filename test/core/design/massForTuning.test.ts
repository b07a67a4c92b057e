import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airProperties } from '../../../src/core/acoustics/airProperties.ts';
import { loadedRadiator } from '../../../src/core/design/alignments/passiveRadiatorBox.ts';
import { evaluateProject } from '../../../src/core/design/evaluateProject.ts';
import { bareTuningHz, massForTuning, notchHz } from '../../../src/core/design/massForTuning.ts';
import { defaultAir } from '../../../src/core/document/defaults.ts';
import type { PassiveRadiator, Project } from '../../../src/core/document/schema.ts';
import { newProject } from '../../../src/core/document/start/newProject.ts';
import { newRadiator } from '../../../src/core/document/start/newRadiator.ts';
import { succeeded } from '../circuit/solved.ts';

const air = succeeded(airProperties(defaultAir));
const base = newProject();
const withRadiator = (changes: Partial<PassiveRadiator>, project: Project = base) => {
  const radiator = { ...newRadiator(project, 'chamber-1'), ...changes };
  return { radiator, project: { ...project, enclosure: { ...project.enclosure, passiveRadiators: [radiator] } } };
};
const massOf = (made: ReturnType<typeof withRadiator>, hz: number): number =>
  succeeded(massForTuning(made.project, made.radiator, hz, air)!);

describe('massForTuning', () => {
  it('gives the wished tuning as the key figures of the whole document state it', () => {
    const made = withRadiator({ count: 2 });
    const addedMassKg = massOf(made, 33);
    const { project } = withRadiator({ count: 2, addedMassKg });
    const evaluated = succeeded(evaluateProject(project));
    // One formula back and forth: rounding alone.
    expect(evaluated.keyFigures.chambers[0]!.tuningHz).toBeCloseTo(33, 9);
  });
  it('asks for three times the radiator’s own mass for half the tuning of the bare one', () => {
    const made = withRadiator({});
    const volumeM3 = succeeded(evaluateProject(made.project)).keyFigures.chambers[0]!.apparentM3;
    const bareHz = bareTuningHz(made.radiator, volumeM3, air);
    expect(massOf(made, bareHz / 2)).toBeCloseTo(3 * made.radiator.mmsKg, 12);
  });
  it('is undone by the loaded radiator of the alignments, worked out from compliance instead of fs (seed 5)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.005, max: 0.05, noNaN: true }),
        fc.double({ min: 0.01, max: 0.2, noNaN: true }),
        fc.double({ min: 10, max: 40, noNaN: true }),
        fc.double({ min: 0.3, max: 0.95, noNaN: true }),
        (sdM2, mmsKg, fsHz, share) => {
          const made = withRadiator({ sdM2, mmsKg, fsHz, count: 1 });
          const volumeM3 = succeeded(evaluateProject(made.project)).keyFigures.chambers[0]!.apparentM3;
          const tuningHz = share * bareTuningHz(made.radiator, volumeM3, air);
          const addedMassKg = massOf(made, tuningHz);
          const cmsMPerN = 1 / ((2 * Math.PI * fsHz) ** 2 * mmsKg);
          const loaded = loadedRadiator({ sdM2, mmsKg, cmsMPerN, count: 1 }, addedMassKg, volumeM3, air);
          expect(loaded.tuningHz / tuningHz).toBeCloseTo(1, 9);
          expect(loaded.notchHz / notchHz({ ...made.radiator, addedMassKg })).toBeCloseTo(1, 9);
        },
      ),
      { seed: 5, numRuns: 40 },
    );
  });
  it('says the highest tuning where even the bare radiator tunes lower', () => {
    const made = withRadiator({ mmsKg: 0.2 });
    const found = massForTuning(made.project, made.radiator, 200, air)!;
    expect(found.ok).toBe(false);
    if (!found.ok) expect(found.problems[0]!.code).toBe('acoustics.radiator-too-heavy');
    const none = massForTuning(made.project, made.radiator, 0, air)!;
    expect(!none.ok && none.problems[0]!.code).toBe('acoustics.no-tuning-asked');
  });
  it('answers nothing where something else opens the chamber too', () => {
    const { radiator, project } = withRadiator({});
    const two = { ...project.enclosure, passiveRadiators: [radiator, { ...radiator, id: 'another' }] };
    expect(massForTuning({ ...project, enclosure: two }, radiator, 30, air)).toBeNull();
  });
});

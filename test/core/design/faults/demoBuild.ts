import type { Build } from '../../../../src/core/design/faults/build.ts';
import { USUAL_TOLERANCES } from '../../../../src/core/design/faults/faultTolerances.ts';
import { healthyUnknowns } from '../../../../src/core/design/faults/healthyUnknowns.ts';
import type { Hypothesis } from '../../../../src/core/design/faults/hypothesis.ts';
import { nominalBuild } from '../../../../src/core/design/faults/nominalBuild.ts';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import type { SpeakerModel } from '../../../../src/core/speaker/model.ts';
import { readModel } from '../../../../src/core/speaker/readModel.ts';
import { demoProject } from '../demoProject.ts';

type Name = Parameters<typeof demoProject>[0];

export function demoModel(name: Name): SpeakerModel {
  const read = readModel(demoProject(name));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.model;
}

export function buildOf(model: SpeakerModel, frequenciesHz: Float64Array): Build {
  const build = nominalBuild(
    model,
    'V1',
    frequenciesHz.map((hz) => 2 * Math.PI * hz),
  );
  if (!build.ok) throw new Error(JSON.stringify(build.problems));
  return build.value;
}

/** A demo project as a healthy build over a sweep. */
export function demoHypothesis(name: Name, count = 60): { readonly model: SpeakerModel; readonly healthy: Hypothesis } {
  const model = demoModel(name);
  const build = buildOf(model, sweepGrid(10, 20_000, count));
  return { model, healthy: { faults: [], build, unknowns: healthyUnknowns(model, build, USUAL_TOLERANCES), wild: [] } };
}

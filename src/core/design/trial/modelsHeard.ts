import type { Project } from '../../document/schema.ts';
import { type Result, succeed } from '../../messages/problem.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import { readModel } from '../../speaker/readModel.ts';

/** Where a loudspeaker is heard from, turned about its listening axis; positive to the right and up. */
export interface HeardAngle {
  readonly horizontalDeg: number;
  readonly verticalDeg: number;
}

/**
 * The model of a document as heard at its own distance and height from several angles. Problems: as `readModel`.
 * @example modelsHeard(project, [{ horizontalDeg: 0, verticalDeg: 0 }, { horizontalDeg: 20, verticalDeg: 0 }])
 */
export function modelsHeard(project: Project, angles: readonly HeardAngle[]): Result<SpeakerModel[]> {
  const models: SpeakerModel[] = [];
  for (const angle of angles) {
    const read = readModel({ ...project, listening: { ...project.listening, ...angle } });
    if (!read.ok) return read;
    models.push(read.value.model);
  }
  return succeed(models);
}

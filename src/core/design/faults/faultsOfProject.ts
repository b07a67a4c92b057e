import type { Project } from '../../document/schema.ts';
import type { Result } from '../../messages/problem.ts';
import { readModel } from '../../speaker/readModel.ts';
import type { FaultReport } from './faultReport.ts';
import { type FaultSearch, findFaults } from './findFaults.ts';

export type ProjectFaultSearch = Omit<FaultSearch, 'model' | 'response'> & {
  readonly project: Project;
  readonly response?: {
    readonly frequenciesHz: ArrayLike<number>;
    readonly levelsDb: ArrayLike<number>;
    /** Where the microphone stood. */
    readonly listening: Project['listening'];
  } | null;
};

/**
 * `findFaults` for a document; the response is compared with what is predicted at the microphone's own place.
 * @example faultsOfProject({ project, impedance })
 */
export function faultsOfProject({ project, response = null, ...search }: ProjectFaultSearch): Result<FaultReport> {
  const read = readModel(project);
  if (!read.ok) return read;
  if (response === null) return findFaults({ ...search, model: read.value.model });
  const there = readModel({ ...project, listening: response.listening });
  if (!there.ok) return there;
  const { frequenciesHz, levelsDb } = response;
  return findFaults({
    ...search,
    model: read.value.model,
    response: { frequenciesHz, levelsDb, model: there.value.model },
  });
}

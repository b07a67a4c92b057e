import type { Project } from '../document/schema.ts';
import { type Finding, type Result, succeed } from '../messages/problem.ts';
import { keepPieces } from '../speaker/keepPieces.ts';
import type { PathMemory } from '../speaker/radiationPath.ts';
import { readModel } from '../speaker/readModel.ts';
import { simulate } from '../speaker/simulate.ts';
import type { Solved } from '../speaker/solved.ts';
import type { Evaluation } from './evaluation.ts';
import { type Check, findFlaws } from './findings/index.ts';
import { inNames } from './inNames.ts';
import { keyFigures } from './keyFigures.ts';
import { sensitivityDbSpl } from './sensitivity.ts';
import { SCREEN_COUNT, SCREEN_FROM_HZ, SCREEN_TO_HZ, sweepGrid } from './sweepGrid.ts';

/** An evaluation with what the next one can take over. */
export type Evaluated = Evaluation & {
  readonly solved: Solved;
  readonly paths: PathMemory;
  readonly sensitivityPaths: PathMemory;
};

const screenGrid = sweepGrid(SCREEN_FROM_HZ, SCREEN_TO_HZ, SCREEN_COUNT);

/**
 * All that the screen shows of a document: model, simulation, key figures, findings.
 *
 * `previous` lends its tabulated admittances, its compiled topology and its paths where they still hold; the result does not depend
 * on it. `more`: checks beside the quick ones, `laterChecks` for all there are. Problems of the document (a negative volume, missing driver numbers, a floating part) name their place.
 * @example evaluateProject(project, undefined, laterChecks)
 */
export function evaluateProject(
  project: Project,
  previous?: Evaluated,
  more: readonly Check[] = [],
): Result<Evaluated> {
  const paths: PathMemory = new Map(previous?.paths);
  const sensitivityPaths: PathMemory = new Map(previous?.sensitivityPaths);
  const read = readModel(project, paths);
  if (!read.ok) return { ok: false, problems: inNames(read.problems, project) };
  const { volumes, findings } = read.value;
  const model = previous === undefined ? read.value.model : keepPieces(read.value.model, previous.model);
  const simulation = simulate(model, screenGrid, previous?.solved);
  if (!simulation.ok) return { ok: false, problems: inNames(simulation.problems, project) };
  const figures = keyFigures(project, model, simulation.value, volumes, sensitivityDbSpl(project, sensitivityPaths));
  const found: Finding[] = [...findings, ...findFlaws({ project, model, simulation: simulation.value, figures }, more)];
  return succeed({
    model,
    simulation: simulation.value,
    keyFigures: figures,
    findings: inNames(found, project),
    solved: simulation.value.solved,
    paths,
    sensitivityPaths,
  });
}

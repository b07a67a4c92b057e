import { evaluateProject } from '../../src/core/design/evaluateProject.ts';
import type { Evaluation } from '../../src/core/design/evaluation.ts';
import type { Project } from '../../src/core/document/schema.ts';
import { fail, problem, type Result, succeed } from '../../src/core/messages/problem.ts';
import { drawSchematic } from '../../src/core/schematic/drawSchematic.ts';
import type { SchematicPlan } from '../../src/core/schematic/plan.ts';
import { createWorkbench, type WorkbenchParts } from '../../src/state/createWorkbench.ts';
import { memoryStorage } from '../../src/state/memoryStorage.ts';
import { twoWay } from '../core/document/twoWay.ts';

const real = evaluateProject(twoWay);
if (!real.ok) throw new Error('The test project must be solvable.');
const base: Evaluation = real.value;

/** An evaluation of its own for each call, so that tests can tell them apart. */
export const evaluationOf = (): Evaluation => ({ ...base, findings: [] });

/** Cannot be solved at 13 V, throws at 14 V: stand-ins for a broken circuit and for a fault of the program. */
export function evaluate(project: Project): Result<Evaluation> {
  if (project.chain.driveV === 13) return fail(problem('circuit.floating-node', { kind: 'node', id: 'x' }));
  if (project.chain.driveV === 14) throw new Error('a fault');
  return succeed(evaluationOf());
}

/** A drawing of its own for each call. */
export const plan = (): SchematicPlan => ({ ...drawSchematic(twoWay.network.parts, ['LS2', 'LS1']) });

/** A workbench over the two-way with stand-ins for what others compute. */
export const bench = (parts: Partial<WorkbenchParts<Evaluation>> = {}) =>
  createWorkbench<Evaluation>({
    project: twoWay,
    evaluate,
    drawSchematic: () => succeed(plan()),
    storage: memoryStorage(),
    ...parts,
  });

export const driveTo = (driveV: number) => ({ type: 'set-drive', driveV }) as const;

import { type Problem, problem } from '../../messages/problem.ts';
import type { Design } from '../design.ts';
import type { Project } from '../schema.ts';
import { curveReferences } from './curveReferences.ts';
import { duplicates } from './duplicates.ts';
import { enclosureReferences } from './enclosureReferences.ts';
import { networkReferences } from './networkReferences.ts';
import { withNames } from './withNames.ts';

/**
 * Everything in a document whose values are valid that refers to something which is not there, of the project and of
 * its kept states; empty when the document hangs together. Curves' own columns are `curveFlaws`.
 */
export function crossReferences(project: Project): readonly Problem[] {
  const { drivers, curves, snapshots } = project;
  const owners = new Set([...drivers, ...snapshots.flatMap((state) => state.drivers)].map((driver) => driver.id));
  const ids = (things: readonly { readonly id: string }[]) => things.map((thing) => thing.id);
  return [
    ...ofDesign(project, project),
    ...duplicates(ids(curves), 'curve', 'curves'),
    ...duplicates(ids(snapshots), 'document', 'kept states'),
    ...curves.flatMap(({ id, name, belongsTo }) =>
      belongsTo.kind === 'driver' && !owners.has(belongsTo.driverId)
        ? [problem('document.curve-without-driver', { kind: 'curve', id }, { name, driverId: belongsTo.driverId })]
        : [],
    ),
    ...snapshots.flatMap((state) =>
      ofDesign(state, project).map((flaw) => ({ ...flaw, values: { ...flaw.values, keptState: state.name } })),
    ),
  ];
}

const ofDesign = (design: Design, { curves }: Project): Problem[] =>
  [
    ...duplicates(
      design.drivers.map((driver) => driver.id),
      'driver',
      'drivers',
    ),
    ...networkReferences(design),
    ...enclosureReferences(design),
    ...curveReferences(design, curves),
  ].map((flaw) => withNames(flaw, { ...design, curves }));

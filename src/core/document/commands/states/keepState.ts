import { fail, problem, succeed } from '../../../messages/problem.ts';
import { designOf } from '../../design.ts';
import { most } from '../../schema.ts';
import { freshId } from '../../start/freshId.ts';
import type { Applier } from '../applier.ts';

export const keepState: Applier<'keep-state'> = (project, { name }) => {
  const { snapshots } = project;
  if (snapshots.length >= most.snapshots) return fail(problem('document.two-states', { kind: 'document' }));
  const id = freshId('state', snapshots);
  return succeed({ ...project, snapshots: [...snapshots, { id, name, ...designOf(project) }] });
};

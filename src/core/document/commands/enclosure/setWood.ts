import { succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';
import { withChanges } from '../withChanges.ts';

export const setWood: Applier<'set-wood'> = (project, { changes }) => {
  const { enclosure } = project;
  const wood = withChanges(enclosure.wood, changes);
  return succeed(withChanges(project, { enclosure: withChanges(enclosure, { wood }) }));
};

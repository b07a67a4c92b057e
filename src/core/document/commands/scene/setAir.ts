import { succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';
import { withChanges } from '../withChanges.ts';

export const setAir: Applier<'set-air'> = (project, { changes }) =>
  succeed(withChanges(project, { air: withChanges(project.air, changes) }));

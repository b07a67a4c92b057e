import { succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';
import { withChanges } from '../withChanges.ts';

export const setName: Applier<'set-name'> = (project, { name }) => succeed(withChanges(project, { name }));

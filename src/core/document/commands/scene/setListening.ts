import { succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';
import { withChanges } from '../withChanges.ts';

export const setListening: Applier<'set-listening'> = (project, { changes }) =>
  succeed(withChanges(project, { listening: withChanges(project.listening, changes) }));

import { succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';
import { withChanges } from '../withChanges.ts';

export const setNotes: Applier<'set-notes'> = (project, { notes }) => succeed(withChanges(project, { notes }));

import { succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';
import { withChanges } from '../withChanges.ts';

export const setDrive: Applier<'set-drive'> = (project, { driveV }) =>
  succeed(withChanges(project, { chain: withChanges(project.chain, { driveV }) }));

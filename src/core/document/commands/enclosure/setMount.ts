import { succeed } from '../../../messages/problem.ts';
import { findSpeaker } from '../../graph/findPart.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withChanges } from '../withChanges.ts';

export const setMount: Applier<'set-mount'> = (project, { partId, changes }) => {
  const found = findSpeaker(project, partId);
  if (!found.ok) return found;
  const { enclosure } = project;
  const mounts = replaceWhere(
    enclosure.mounts,
    (mount) => mount.partId === partId,
    (mount) => withChanges(mount, changes),
  );
  return succeed(withChanges(project, { enclosure: withChanges(enclosure, { mounts }) }));
};

import type { Part } from '../../../circuit/part.ts';
import { fail, problem, succeed } from '../../../messages/problem.ts';
import { findPart } from '../../graph/findPart.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withChanges } from '../withChanges.ts';
import { withParts } from './withParts.ts';

export const setPart: Applier<'set-part'> = (project, { partId, changes }) => {
  const found = findPart(project, partId);
  if (!found.ok) return found;
  const part = found.value;
  const foreign = Object.keys(changes).filter((field) => field === 'id' || field === 'nodes' || !(field in part));
  if (foreign.length > 0) {
    const place = { kind: 'part', id: partId } as const;
    return fail(...foreign.map((field) => problem('document.no-such-value', place, { kind: part.kind, field })));
  }
  const changed = withChanges(part, changes as Partial<Part>);
  const parts = replaceWhere(
    project.network.parts,
    (candidate) => candidate === part,
    () => changed,
  );
  return succeed(withParts(project, parts));
};

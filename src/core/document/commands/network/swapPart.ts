import { fail, problem, succeed } from '../../../messages/problem.ts';
import { findPart } from '../../graph/findPart.ts';
import { freshPartId } from '../../graph/freshPartId.ts';
import { namePart } from '../../graph/namePart.ts';
import { saysKind } from '../../graph/partPrefix.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { alike } from '../withChanges.ts';
import { withParts } from './withParts.ts';

const fixed = (kind: string) => kind === 'speaker' || kind === 'amplifier';

/** A part of another kind takes a name of its kind; one of the same kind keeps the name. */
export const swapPart: Applier<'swap-part'> = (project, { partId, part }) => {
  const found = findPart(project, partId);
  if (!found.ok) return found;
  const old = found.value;
  if (old.kind !== part.kind && (fixed(old.kind) || fixed(part.kind))) {
    return fail(problem('document.keeps-kind', { kind: 'part', id: partId }));
  }
  const { parts } = project.network;
  const id = old.kind === part.kind || saysKind(old.id, part.kind) ? old.id : freshPartId(parts, part.kind);
  const next = namePart(part, id, old.nodes);
  const swapped = replaceWhere(
    parts,
    (candidate) => candidate === old,
    () => (alike(next, old) ? old : next),
  );
  return succeed(withParts(project, swapped));
};

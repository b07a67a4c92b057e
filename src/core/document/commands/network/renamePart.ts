import { fail, problem, succeed } from '../../../messages/problem.ts';
import { findPart } from '../../graph/findPart.ts';
import { partPrefix, saysKind } from '../../graph/partPrefix.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withChanges } from '../withChanges.ts';
import { withParts } from './withParts.ts';

/** A speaker's place on the cabinet and an amplifier's settings follow its name. */
export const renamePart: Applier<'rename-part'> = (project, { partId, to }) => {
  const found = findPart(project, partId);
  if (!found.ok) return found;
  const part = found.value;
  if (to === partId) return succeed(project);
  const place = { kind: 'part', id: partId } as const;
  const taken = project.network.parts.some((other) => other !== part && other.id.toLowerCase() === to.toLowerCase());
  if (taken) return fail(problem('document.name-taken', place, { to }));
  if (!saysKind(to, part.kind)) {
    return fail(problem('document.bad-part-name', place, { to, kind: part.kind, prefix: partPrefix[part.kind] }));
  }
  const { enclosure, chain, network } = project;
  const renamed = withParts(
    project,
    replaceWhere(
      network.parts,
      (candidate) => candidate === part,
      (candidate) => ({ ...candidate, id: to }),
    ),
  );
  const mounts = replaceWhere(
    enclosure.mounts,
    (mount) => mount.partId === partId,
    (mount) => ({ ...mount, partId: to }),
  );
  const amplifiers = replaceWhere(
    chain.amplifiers,
    (amplifier) => part.kind === 'amplifier' && amplifier.id === partId,
    (amplifier) => ({ ...amplifier, id: to }),
  );
  return succeed(
    withChanges(renamed, {
      enclosure: withChanges(enclosure, { mounts }),
      chain: withChanges(chain, { amplifiers }),
    }),
  );
};

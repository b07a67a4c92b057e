import { RETURN } from '../../../circuit/branch.ts';
import { fail, problem, succeed } from '../../../messages/problem.ts';
import { findPart } from '../../graph/findPart.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withParts } from './withParts.ts';

export const moveEnd: Applier<'move-end'> = (project, { partId, end, to }) => {
  const found = findPart(project, partId);
  if (!found.ok) return found;
  const part = found.value;
  const { parts } = project.network;
  if (part.nodes[end] === to) return succeed(project);
  const other = part.nodes[end === 0 ? 1 : 0];
  if (other === to) return fail(problem('document.both-ends', { kind: 'part', id: partId }, { node: to }));
  if (!parts.some((candidate) => candidate.nodes.includes(to))) {
    return fail(problem('document.unknown-node', { kind: 'node', id: to }));
  }
  if (part.kind === 'amplifier' && end === 1 && to !== RETURN) {
    return fail(problem('document.amplifier-return', { kind: 'part', id: partId }, { node: to }));
  }
  const nodes: readonly [string, string] = end === 0 ? [to, other] : [other, to];
  const moved = replaceWhere(
    parts,
    (candidate) => candidate === part,
    (candidate) => ({ ...candidate, nodes }),
  );
  return succeed(withParts(project, moved));
};

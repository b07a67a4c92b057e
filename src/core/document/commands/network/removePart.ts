import { fail, problem, succeed } from '../../../messages/problem.ts';
import { findPart } from '../../graph/findPart.ts';
import { joinNodes } from '../../graph/joinNodes.ts';
import type { Applier } from '../applier.ts';
import { withParts } from './withParts.ts';

export const removePart: Applier<'remove-part'> = (project, { partId, how }) => {
  const found = findPart(project, partId);
  if (!found.ok) return found;
  const { kind, nodes } = found.value;
  if (kind === 'speaker' || kind === 'amplifier') {
    return fail(problem('document.not-removable', { kind: 'part', id: partId }, { kind }));
  }
  const rest = project.network.parts.filter((part) => part.id !== partId);
  const [a, b] = nodes;
  if (how === 'leave-open' || a === b) return succeed(withParts(project, rest));
  const shorted = rest.filter((part) => part.nodes.includes(a) && part.nodes.includes(b));
  if (shorted.length > 0) {
    return fail(
      ...shorted.map((part) =>
        part.kind === 'speaker' || part.kind === 'amplifier'
          ? problem('document.would-short', { kind: 'part', id: part.id }, { kind: part.kind })
          : problem('document.would-short-part', { kind: 'part', id: part.id }, { a, b }),
      ),
    );
  }
  return succeed(withParts(project, joinNodes(rest, a, b)));
};

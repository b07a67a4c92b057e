import { fail, problem, succeed } from '../../../messages/problem.ts';
import { findPart } from '../../graph/findPart.ts';
import { freshNodes } from '../../graph/freshNodes.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { addPart } from './addPart.ts';
import { withParts } from './withParts.ts';

/** The old part moves to a fresh node; the new one stands between that and the old place, in the same direction. */
export const insertInSeries: Applier<'insert-in-series'> = (project, { partId, end, part }) => {
  const found = findPart(project, partId);
  if (!found.ok) return found;
  const target = found.value;
  if (part.kind === 'amplifier') return fail(problem('document.amplifier-in-series', { kind: 'part', id: partId }));
  const { parts } = project.network;
  const outer = target.nodes[end];
  const fresh = freshNodes(parts, 1)[0]!;
  if (target.kind === 'amplifier' && end === 1) {
    return fail(problem('document.amplifier-return', { kind: 'part', id: partId }, { node: fresh }));
  }
  const nodes: readonly [string, string] = end === 0 ? [fresh, target.nodes[1]] : [target.nodes[0], fresh];
  const moved = replaceWhere(
    parts,
    (candidate) => candidate === target,
    (candidate) => ({ ...candidate, nodes }),
  );
  // Current leaves an amplifier by its first terminal, and enters every other part there.
  const onwards = target.kind === 'amplifier' ? end === 0 : end === 1;
  const index = parts.indexOf(target) + (onwards ? 1 : 0);
  return succeed(addPart(withParts(project, moved), part, onwards ? [fresh, outer] : [outer, fresh], index));
};

import { RETURN } from '../../../circuit/branch.ts';
import { fail, problem, succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';
import { addPart } from './addPart.ts';

export const addAcross: Applier<'add-across'> = (project, { nodes, part }) => {
  const { parts } = project.network;
  const unknown = nodes.filter((node) => !parts.some((candidate) => candidate.nodes.includes(node)));
  if (unknown.length > 0) {
    return fail(...unknown.map((node) => problem('document.unknown-node', { kind: 'node', id: node })));
  }
  if (nodes[0] === nodes[1]) {
    return fail(problem('document.same-node', { kind: 'node', id: nodes[0] }));
  }
  const upright: readonly [string, string] =
    part.kind === 'amplifier' && nodes[0] === RETURN ? [nodes[1], nodes[0]] : nodes;
  return succeed(addPart(project, part, upright, parts.length));
};

import { RETURN } from '../../../circuit/branch.ts';
import type { Part } from '../../../circuit/part.ts';
import { fail, problem, succeed } from '../../../messages/problem.ts';
import { findSpeaker } from '../../graph/findPart.ts';
import { freshNodes } from '../../graph/freshNodes.ts';
import { freshPartId } from '../../graph/freshPartId.ts';
import type { Applier } from '../applier.ts';
import { withParts } from './withParts.ts';

/**
 * A section between a speaker's driven terminal and what was there, or across the speaker when it names no `@in`. Its
 * return is the speaker's other terminal, so that a section loads the speaker alone even where speakers stand in series.
 * The driven terminal is the plus one, or the minus one of a reversed speaker whose plus is on the return.
 */
export const insertSection: Applier<'insert-section'> = (project, { speakerId, parts: section }) => {
  const found = findSpeaker(project, speakerId);
  if (!found.ok) return found;
  const speaker = found.value;
  const { parts } = project.network;
  const foreign = section.filter((part) => part.kind === 'speaker' || part.kind === 'amplifier');
  if (foreign.length > 0) {
    const place = { kind: 'part', id: speakerId } as const;
    return fail(...foreign.map(({ kind }) => problem('document.section-part', place, { kind })));
  }
  const named = [...new Set(section.flatMap((part) => part.nodes))];
  const strange = named.filter((node) => node !== RETURN && !/^@(in|out|\d+)$/.test(node));
  if (strange.length > 0 || !named.includes('@out')) {
    const nodes = strange.length > 0 ? strange : ['(none at @out)'];
    return fail(...nodes.map((node) => problem('document.section-node', { kind: 'node', id: node }, { node })));
  }

  const hot = speaker.nodes[0] === RETURN ? 1 : 0;
  const before = speaker.nodes[hot];
  const inner = named.filter((node) => /^@\d+$/.test(node));
  const moves = named.includes('@in');
  const fresh = freshNodes(parts, inner.length + (moves ? 1 : 0));
  const names = new Map(inner.map((node, k) => [node, fresh[k]!]));
  const after = moves ? fresh[inner.length]! : before;
  names.set('@in', before);
  names.set('@out', after);
  names.set(RETURN, speaker.nodes[hot === 0 ? 1 : 0]);

  const placed: Part[] = [];
  for (const part of section) {
    const id = freshPartId([...parts, ...placed], part.kind);
    placed.push({ ...part, id, nodes: [names.get(part.nodes[0])!, names.get(part.nodes[1])!] });
  }
  const moved: Part = moves
    ? { ...speaker, nodes: hot === 0 ? [after, speaker.nodes[1]] : [speaker.nodes[0], after] }
    : speaker;
  const index = parts.indexOf(speaker);
  const whole = [...parts.slice(0, index), ...placed, moved, ...parts.slice(index + 1)];
  return succeed(withParts(project, whole));
};

import { succeed } from '../../../messages/problem.ts';
import { findSpeaker } from '../../graph/findPart.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withParts } from './withParts.ts';

export const reverseSpeaker: Applier<'reverse-speaker'> = (project, { partId }) => {
  const found = findSpeaker(project, partId);
  if (!found.ok) return found;
  const reversed = replaceWhere(
    project.network.parts,
    (part) => part === found.value,
    (part) => ({ ...part, nodes: [part.nodes[1], part.nodes[0]] as const }),
  );
  return succeed(withParts(project, reversed));
};

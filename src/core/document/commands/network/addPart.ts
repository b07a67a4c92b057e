import type { NewPart } from '../../command.ts';
import { freshPartId } from '../../graph/freshPartId.ts';
import { namePart } from '../../graph/namePart.ts';
import type { Project } from '../../schema.ts';
import { mountFor } from '../../start/mountFor.ts';
import { settingsFor } from '../../start/settingsFor.ts';
import { withParts } from './withParts.ts';

/** The project with a new part at a place of the list; a speaker gets a place on the front, an amplifier its settings. */
export function addPart(project: Project, part: NewPart, nodes: readonly [string, string], index: number): Project {
  const { parts } = project.network;
  const named = namePart(part, freshPartId(parts, part.kind), nodes);
  const wired = withParts(project, [...parts.slice(0, index), named, ...parts.slice(index)]);
  if (named.kind === 'speaker') {
    const { enclosure } = wired;
    const mounts = [...enclosure.mounts, mountFor(wired, named.id, named.driverId)];
    return { ...wired, enclosure: { ...enclosure, mounts } };
  }
  if (named.kind === 'amplifier') {
    const { chain } = wired;
    return { ...wired, chain: { ...chain, amplifiers: [...chain.amplifiers, settingsFor(chain, named.id)] } };
  }
  return wired;
}

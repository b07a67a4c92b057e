import type { Command } from '../document/command.ts';
import type { Chamber, Project } from '../document/schema.ts';
import { type Result, succeed } from '../messages/problem.ts';
import { type ApparentSize, sizeForApparent } from './sizeForApparent.ts';

export interface SealedBox extends ApparentSize {
  readonly command: Command;
}

/**
 * A chamber made a sealed box of this apparent volume, m³: its size, and its ports taken out with the space that they took.
 *
 * Ports that lead into it from elsewhere go too; passive radiators and lines stay. Problems: those of `sizeForApparent`.
 * @example sealedBoxFor(project, chamber, 0.012)
 */
export function sealedBoxFor(project: Project, chamber: Chamber, volumeM3: number): Result<SealedBox> {
  const { enclosure } = project;
  const goes = ({ chamberId, toChamberId }: (typeof enclosure.ports)[number]): boolean =>
    chamberId === chamber.id || toChamberId === chamber.id;
  const without = { ...project, enclosure: { ...enclosure, ports: enclosure.ports.filter((port) => !goes(port)) } };
  const size = sizeForApparent(without, chamber, volumeM3);
  if (!size.ok) return size;
  const { volume } = size.value.sized;
  const commands: Command[] = [
    { type: 'set-chamber', id: chamber.id, changes: { volume } },
    ...enclosure.ports.filter(goes).map(({ id }): Command => ({ type: 'remove-port', id })),
  ];
  return succeed({ ...size.value, command: { type: 'together', commands } });
}

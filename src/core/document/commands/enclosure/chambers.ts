import { fail, problem, type Result, succeed } from '../../../messages/problem.ts';
import type { Project } from '../../schema.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withChanges } from '../withChanges.ts';

const unknown = (id: string): Result<never> => fail(problem('document.unknown-chamber', { kind: 'chamber', id }));
const has = (project: Project, id: string) => project.enclosure.chambers.some((chamber) => chamber.id === id);

export const addChamber: Applier<'add-chamber'> = (project, { chamber }) => {
  const { enclosure } = project;
  return succeed({ ...project, enclosure: { ...enclosure, chambers: [...enclosure.chambers, chamber] } });
};

export const setChamber: Applier<'set-chamber'> = (project, { id, changes }) => {
  if (!has(project, id)) return unknown(id);
  const { enclosure } = project;
  const chambers = replaceWhere(
    enclosure.chambers,
    (chamber) => chamber.id === id,
    (chamber) => withChanges(chamber, changes),
  );
  return succeed(withChanges(project, { enclosure: withChanges(enclosure, { chambers }) }));
};

/** Its ports go with it; drivers in it must have moved before. */
export const removeChamber: Applier<'remove-chamber'> = (project, { id }) => {
  const { enclosure } = project;
  const chamber = enclosure.chambers.find((candidate) => candidate.id === id);
  if (!chamber) return unknown(id);
  const inside = enclosure.mounts.filter((mount) => mount.chamberId === id).map((mount) => mount.partId);
  if (inside.length > 0) {
    const values = { name: chamber.name, speakers: inside.join(', ') };
    return fail(problem('document.chamber-in-use', { kind: 'chamber', id }, values));
  }
  const chambers = enclosure.chambers.filter((candidate) => candidate !== chamber);
  const ports = enclosure.ports.some((port) => port.chamberId === id)
    ? enclosure.ports.filter((port) => port.chamberId !== id)
    : enclosure.ports;
  return succeed({ ...project, enclosure: { ...enclosure, chambers, ports } });
};

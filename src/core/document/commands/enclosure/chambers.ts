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

/** Its ports, passive radiators, lines and braces go with it; drivers in it must have moved before. */
export const removeChamber: Applier<'remove-chamber'> = (project, { id }) => {
  const { enclosure } = project;
  const chamber = enclosure.chambers.find((candidate) => candidate.id === id);
  if (!chamber) return unknown(id);
  const inside = enclosure.mounts
    .filter((mount) => mount.chamberId === id || mount.frontChamberId === id)
    .map((mount) => mount.partId);
  if (inside.length > 0) {
    const values = { name: chamber.name, speakers: inside.join(', ') };
    return fail(problem('document.chamber-in-use', { kind: 'chamber', id }, values));
  }
  const chambers = enclosure.chambers.filter((candidate) => candidate !== chamber);
  const lists = {
    chambers,
    ports: enclosure.ports.filter((port) => port.chamberId !== id && port.toChamberId !== id),
    passiveRadiators: enclosure.passiveRadiators.filter((radiator) => radiator.chamberId !== id),
    lines: enclosure.lines.filter(
      ({ chamberId, end }) => chamberId !== id && !(end.kind === 'chamber' && end.chamberId === id),
    ),
    wood: {
      ...enclosure.wood,
      braces: enclosure.wood.braces.filter((brace) => brace.chamberId !== id),
      board: enclosure.wood.board?.chamberId === id ? null : enclosure.wood.board,
    },
  };
  return succeed(withChanges(project, { enclosure: withChanges(enclosure, lists) }));
};

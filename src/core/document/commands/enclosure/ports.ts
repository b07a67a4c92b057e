import { fail, problem, type Result, succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withChanges } from '../withChanges.ts';

const unknown = (id: string): Result<never> => fail(problem('document.unknown-port', { kind: 'port', id }));

export const addPort: Applier<'add-port'> = (project, { port }) => {
  const { enclosure } = project;
  return succeed({ ...project, enclosure: { ...enclosure, ports: [...enclosure.ports, port] } });
};

export const setPort: Applier<'set-port'> = (project, { id, changes }) => {
  const { enclosure } = project;
  if (!enclosure.ports.some((port) => port.id === id)) return unknown(id);
  const ports = replaceWhere(
    enclosure.ports,
    (port) => port.id === id,
    (port) => withChanges(port, changes),
  );
  return succeed(withChanges(project, { enclosure: withChanges(enclosure, { ports }) }));
};

export const removePort: Applier<'remove-port'> = (project, { id }) => {
  const { enclosure } = project;
  const ports = enclosure.ports.filter((port) => port.id !== id);
  if (ports.length === enclosure.ports.length) return unknown(id);
  return succeed({ ...project, enclosure: { ...enclosure, ports } });
};

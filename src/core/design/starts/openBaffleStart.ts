import type { Command } from '../../document/command.ts';
import type { Project } from '../../document/schema.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';

/**
 * The command that puts a driver on an open baffle: nothing behind it and nothing before it; its chambers go with their ports where no
 * other driver uses them.
 * @example openBaffleStart(project, 'LS1')
 */
export function openBaffleStart({ enclosure }: Project, partId: string): Result<Command> {
  const mount = enclosure.mounts.find((candidate) => candidate.partId === partId);
  if (mount === undefined) return fail(problem('speaker.no-mount', { kind: 'part', id: partId }));
  const others = enclosure.mounts.filter((other) => other !== mount);
  const unused = [mount.chamberId, mount.frontChamberId].filter(
    (id) => id !== null && !others.some((other) => other.chamberId === id || other.frontChamberId === id),
  );
  const commands: Command[] = [
    { type: 'set-mount', partId, changes: { chamberId: null, frontChamberId: null, back: 'open' } },
    ...unused.map((id): Command => ({ type: 'remove-chamber', id: id! })),
  ];
  return succeed({ type: 'together', commands });
}

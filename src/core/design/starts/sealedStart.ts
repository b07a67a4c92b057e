import type { Command } from '../../document/command.ts';
import type { Chamber, Project } from '../../document/schema.ts';
import { newChamber } from '../../document/start/newChamber.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { emptied } from './emptied.ts';

/**
 * The command that makes a plain sealed box of a driver's: a chamber behind it (its own, else the first, else a new one), the air
 * outside before it, and nothing that opens that chamber.
 * @example sealedStart(project, 'LS1')
 */
export function sealedStart(project: Project, partId: string): Result<Command> {
  const { mounts, chambers } = project.enclosure;
  const mount = mounts.find((candidate) => candidate.partId === partId);
  if (mount === undefined) return fail(problem('speaker.no-mount', { kind: 'part', id: partId }));
  const added: Chamber | null = chambers.length === 0 ? newChamber(project) : null;
  const chamberId = mount.chamberId ?? chambers[0]?.id ?? added?.id ?? null;
  const commands: Command[] = [
    ...(added ? [{ type: 'add-chamber', chamber: added } as const] : []),
    ...(chamberId === null ? [] : emptied(project, chamberId)),
    { type: 'set-mount', partId, changes: { chamberId, frontChamberId: null, back: 'closed' } },
  ];
  return succeed({ type: 'together', commands });
}

import type { Command } from '../../document/command.ts';
import { freshPartId } from '../../document/graph/freshPartId.ts';
import type { Chamber, Project } from '../../document/schema.ts';
import { newChamber } from '../../document/start/newChamber.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { wayOf } from './wayOf.ts';

/** Air between the two cones beside the outer driver's own body: its cone area times this share of its depth (common practice, no source). */
const BETWEEN_SHARE = 0.5;
const LEAST_M3 = 1e-4;

/**
 * The command that makes a driver an isobaric pair: an equal second one behind it, wired in parallel with it, and between them a small
 * sealed coupling chamber; the second one keeps the chamber that the first had.
 *
 * Both stand the same way round, the outer one's back and the inner one's front on the coupling chamber; face to face with one of them
 * reversed in its wiring is the same circuit. `design.needs-chamber` without a chamber behind it.
 * @example isobaricStart(project, 'LS1')
 */
export function isobaricStart(project: Project, partId: string): Result<Command> {
  const way = wayOf(project, partId);
  if (!way.ok) return way;
  const { mount, driver, parameters } = way.value;
  const part = project.network.parts.find(({ id }) => id === partId);
  if (part?.kind !== 'speaker' || mount.chamberId === null) {
    return fail(problem('design.needs-chamber', { kind: 'mount', id: partId }, { name: partId }));
  }
  const betweenM3 = Math.max(LEAST_M3, BETWEEN_SHARE * parameters.sdM2 * driver.depthM);
  const coupling: Chamber = {
    ...newChamber(project),
    name: 'Coupling chamber',
    volume: { kind: 'stated', grossM3: rounded(driver.displacementM3 + betweenM3) },
  };
  const second = freshPartId(project.network.parts, 'speaker');
  const { xM, yM, acousticCentreZM } = mount;
  return succeed({
    type: 'together',
    commands: [
      { type: 'add-chamber', chamber: coupling },
      {
        type: 'add-across',
        nodes: part.nodes,
        part: { kind: 'speaker', driverId: driver.id, note: '' },
      },
      {
        type: 'set-mount',
        partId: second,
        changes: {
          chamberId: mount.chamberId,
          frontChamberId: coupling.id,
          back: 'closed',
          xM,
          yM,
          acousticCentreZM: acousticCentreZM - driver.depthM,
        },
      },
      { type: 'set-mount', partId, changes: { chamberId: coupling.id } },
    ],
  });
}

/** To 10 ml, so that the number can be read. */
const rounded = (m3: number): number => Math.ceil(m3 * 1e5) / 1e5;

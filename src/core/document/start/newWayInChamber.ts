import type { Command } from '../command.ts';
import type { Driver, Project } from '../schema.ts';
import { newChamber } from './newChamber.ts';
import { newWay } from './newWay.ts';
import { orderedSpot } from './orderedSpot.ts';

/** Air that a cone mid is often given to begin with, m³ (common practice, no source). */
const MID_CHAMBER_M3 = 0.004;

/**
 * The command that adds a way of this role with the air and the place that it needs: a mid gets a small sealed chamber of its
 * own, since the pressure of a woofer's chamber would move its cone; tweeters come above mids and those above woofers, which
 * move down where there is no room above them (`orderedSpot`).
 * @example dispatch(newWayInChamber(project, 'mid'))
 */
export function newWayInChamber(project: Project, role: Driver['role']): Command {
  const way = newWay(project, role);
  const spot = orderedSpot(project, way.driver);
  const mount = { ...way.mount, ...(spot === null ? {} : { xM: 0, yM: spot.yM }) };
  const moves = (spot?.moves ?? []).map(({ partId, yM }): Command => ({ type: 'set-mount', partId, changes: { yM } }));
  const hasOwnAir = role === 'mid' && project.enclosure.chambers.length > 0;
  if (!hasOwnAir) {
    const placed: Command = { ...way, mount };
    return moves.length === 0 ? placed : { type: 'together', commands: [placed, ...moves] };
  }
  const chamber = {
    ...newChamber(project),
    name: 'Mid chamber',
    volume: { kind: 'stated' as const, grossM3: MID_CHAMBER_M3 },
  };
  const commands: Command[] = [
    { type: 'add-chamber', chamber },
    { ...way, mount: { ...mount, chamberId: chamber.id } },
    ...moves,
  ];
  return { type: 'together', commands };
}

import type { Command } from '../command.ts';
import type { Driver, Project } from '../schema.ts';
import { newChamber } from './newChamber.ts';
import { newWay } from './newWay.ts';

/** Air that a cone mid is often given to begin with, m³ (common practice, no source). */
const MID_CHAMBER_M3 = 0.004;

/**
 * The command that adds a way of this role with the air it needs: a mid gets a small sealed chamber of its own, since the
 * pressure of a woofer's chamber would move its cone; the others go where `newWay` puts them.
 * @example dispatch(newWayInChamber(project, 'mid'))
 */
export function newWayInChamber(project: Project, role: Driver['role']): Command {
  const way = newWay(project, role);
  if (role !== 'mid' || project.enclosure.chambers.length === 0) return way;
  const chamber = {
    ...newChamber(project),
    name: 'Mid chamber',
    volume: { kind: 'stated' as const, grossM3: MID_CHAMBER_M3 },
  };
  const commands: Command[] = [
    { type: 'add-chamber', chamber },
    { ...way, mount: { ...way.mount, chamberId: chamber.id } },
  ];
  return { type: 'together', commands };
}

import type { CommandOf } from '../command.ts';
import type { Driver, Project } from '../schema.ts';
import { freshId } from './freshId.ts';
import { mountFor } from './mountFor.ts';
import { newDriver } from './newDriver.ts';

/**
 * The command that adds a way of this role, with an invented driver in a free place of the front.
 * @example dispatch(newWay(project, 'tweeter'))
 */
export function newWay(project: Project, role: Driver['role']): CommandOf<'add-way'> {
  const driver = newDriver(role, freshId('driver', allDrivers(project)));
  const { partId: _, ...mount } = mountFor({ ...project, drivers: [...project.drivers, driver] }, '', driver.id);
  return { type: 'add-way', driver, mount };
}

/** Kept states' drivers too, so that curves of a driver which is gone never change their owner. */
const allDrivers = (project: Project) => [...project.drivers, ...project.snapshots.flatMap((state) => state.drivers)];

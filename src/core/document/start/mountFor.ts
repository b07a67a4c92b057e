import { plainMount } from '../plain.ts';
import type { Driver, Mount, Project } from '../schema.ts';
import { freeSpot } from './freeSpot.ts';

/**
 * A starting place for a speaker: beside what is on the front already, in the chamber where the same driver sits, else
 * in the first one; a tweeter in none, since it is closed at its back.
 */
export function mountFor(project: Project, partId: string, driverId: string): Mount {
  const { drivers, enclosure, network } = project;
  const driver = drivers.find((candidate) => candidate.id === driverId);
  const twins = network.parts.filter((part) => part.kind === 'speaker' && part.driverId === driverId);
  const twin = enclosure.mounts.find((mount) => twins.some((part) => part.id === mount.partId));
  const first = enclosure.chambers[0]?.id ?? null;
  return {
    partId,
    chamberId: twin ? twin.chamberId : driver?.role === 'tweeter' ? null : first,
    ...freeSpot(project, (driver?.outerDiameterM ?? 0) / 2, driver?.role === 'woofer' ? 'bottom' : 'top'),
    ...plainMount,
    acousticCentreZM: twin ? twin.acousticCentreZM : driver ? startingCentreZM(driver) : 0,
  };
}

/** A dome radiates from the front plane, a cone from near its coil, half its depth back: a start, to be measured (common practice, no source). */
export const startingCentreZM = ({ shape, depthM }: Pick<Driver, 'shape' | 'depthM'>): number =>
  shape === 'dome' ? 0 : -depthM / 2;

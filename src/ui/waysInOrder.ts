import type { Driver, Project } from '../core/document/schema.ts';
import { wayOrder } from '../core/document/wayOrder.ts';

/** One way of the loudspeaker: a speaker part, the driver it is, and its place in lane order. */
export interface Way {
  /** Id of the speaker part, `LS1`. */
  readonly speakerId: string;
  readonly driver: Driver | null;
  /** 0 for the topmost on the baffle; picks colour and dash (`wayStyle`). */
  readonly index: number;
  /** What it is called on screen: its role, with the part's id where two have the same. */
  readonly name: string;
}

const known = new WeakMap<Project, readonly Way[]>();

/**
 * The ways of a project in lane order: as their drivers sit on the baffle, from the top down, then from the left. One list
 * per document, so that components may select it from the store.
 * Example: `waysInOrder(project).map((way) => way.name)` gives `['tweeter', 'mid', 'woofer']`.
 */
export function waysInOrder(project: Project): readonly Way[] {
  const before = known.get(project);
  if (before) return before;
  const driverOf = (speakerId: string): Driver | null => {
    const part = project.network.parts.find((candidate) => candidate.id === speakerId);
    if (part?.kind !== 'speaker') return null;
    return project.drivers.find((driver) => driver.id === part.driverId) ?? null;
  };
  const speakers = wayOrder(project).map((speakerId) => ({ speakerId, driver: driverOf(speakerId) }));
  const roleOf = (driver: Driver | null): string => driver?.role ?? 'driver';
  const ways = speakers.map(({ speakerId, driver }, index) => {
    const role = roleOf(driver);
    const alone = speakers.filter((other) => roleOf(other.driver) === role).length === 1;
    return { speakerId, driver, index, name: alone ? role : `${role} ${speakerId}` };
  });
  known.set(project, ways);
  return ways;
}

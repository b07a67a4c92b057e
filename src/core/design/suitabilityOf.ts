import { defaultLossQ } from '../document/defaults.ts';
import type { Project } from '../document/schema.ts';
import { wayOf } from './starts/wayOf.ts';
import { type Suitability, suitability } from './suitability.ts';

/**
 * Whether the driver of a speaker suits each kind of box, with the leak of its own chamber, else the default one; none where its numbers
 * are not fully known.
 * @example suitabilityOf(project, 'LS1')
 */
export function suitabilityOf(project: Project, partId: string): readonly Suitability[] {
  const way = wayOf(project, partId);
  if (!way.ok) return [];
  const chamber = project.enclosure.chambers.find(({ id }) => id === way.value.mount.chamberId);
  return suitability(way.value.figures, chamber?.leak?.q ?? defaultLossQ.leak);
}

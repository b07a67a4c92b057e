import { endClearance } from '../acoustics/port/endClearance.ts';
import { clearDepthM, frontSetbackM, thicknessOfM } from '../document/insideSpace.ts';
import type { Enclosure, Port } from '../document/schema.ts';

export interface PortRoom {
  /** From the outer face of its panel to the wall that faces its inner end, m. */
  readonly depthM: number;
  /** Free air behind its inner end as it is now; below 0 where it runs into the wall. */
  readonly behindM: number;
  /** What that should be at least, and what is usually left. */
  readonly leastM: number;
  readonly wishedM: number;
  /** Longest straight port that leaves the least room, m. */
  readonly longestM: number;
}

/**
 * Room for a straight port between its own panel and the wall that faces its inner end; null for one with bends or between two chambers,
 * which says nothing of where it runs.
 *
 * A chamber that is given by bounds may end before the back; one of stated size is taken as deep as the cabinet. Clearances: `endClearance`.
 * @example portRoom(project.enclosure.ports[0], project.enclosure)?.longestM
 */
export function portRoom(port: Port, enclosure: Enclosure): PortRoom | null {
  if (port.bends > 0 || port.toChamberId !== null) return null;
  const volume = enclosure.chambers.find(({ id }) => id === port.chamberId)?.volume;
  const clearM = clearDepthM(enclosure, port.yM);
  const shortened = volume?.kind === 'geometry' && volume.depthM !== null ? Math.min(clearM, volume.depthM) : clearM;
  const wholeM = enclosure.depthM - frontSetbackM(enclosure, port.yM);
  // Seen from the front the chamber begins behind the front; from the back there must be air right behind it.
  const depthM =
    port.face === 'front'
      ? wholeM - clearM - thicknessOfM(enclosure, 'back') + shortened
      : shortened < clearM
        ? 0
        : clearM + thicknessOfM(enclosure, 'back');
  const { leastM, wishedM } = endClearance(port.shape);
  return { depthM, behindM: depthM - port.lengthM, leastM, wishedM, longestM: Math.max(0, depthM - leastM) };
}

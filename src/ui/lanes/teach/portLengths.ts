import type { Enclosure, Port } from '../../../core/document/schema.ts';
import { openingM } from '../enclosure/portFaces.ts';

/**
 * The lengths that a lesson offers, m: from the bare hole in the panel to one opening's width before the opposite wall.
 */
export function portLengths(
  enclosure: Pick<Enclosure, 'depthM' | 'panelM'>,
  port: Port,
): { readonly leastM: number; readonly greatestM: number } {
  const { widthM, heightM } = openingM(port);
  const longest = enclosure.depthM - enclosure.panelM - Math.min(widthM, heightM);
  return { leastM: enclosure.panelM, greatestM: Math.max(port.lengthM, longest) };
}

import type { Design } from './design.ts';

/** Speaker parts in the order of the lanes: as they sit on the front, from the top down, then from the left, then by name. */
export function wayOrder({ network, enclosure }: Pick<Design, 'network' | 'enclosure'>): readonly string[] {
  const mountOf = (id: string) => enclosure.mounts.find((mount) => mount.partId === id);
  return network.parts
    .filter((part) => part.kind === 'speaker')
    .map(({ id }) => ({ id, yM: mountOf(id)?.yM ?? -1, xM: mountOf(id)?.xM ?? 0 }))
    .sort((a, b) => b.yM - a.yM || a.xM - b.xM || (a.id < b.id ? -1 : 1))
    .map(({ id }) => id);
}

import { clearHeights } from '../../../../../core/document/insideSpace.ts';
import type { Enclosure } from '../../../../../core/document/schema.ts';
import { partitions, sideChambers } from '../../sideChambers.ts';

/** Heights between the cabinet's boards where it is open at its back, since a driver there is; none on a bare baffle. */
export function openStretches(enclosure: Enclosure): { readonly bottomM: number; readonly topM: number }[] {
  const open = enclosure.mounts.filter(({ back, chamberId }) => back === 'open' && chamberId === null);
  if (open.length === 0 || enclosure.chambers.length === 0) return [];
  const clear = clearHeights(enclosure);
  const solid = [
    { bottomM: 0, topM: clear.bottomM },
    ...sideChambers(enclosure).filter(({ stated }) => !stated),
    ...partitions(enclosure).filter(({ behind }) => behind === null),
    { bottomM: clear.topM, topM: enclosure.heightM },
  ].sort((a, b) => a.bottomM - b.bottomM);
  return solid.flatMap(({ topM }, i) => {
    const next = solid[i + 1];
    if (!next || next.bottomM - topM < 1e-3) return [];
    return open.some(({ yM }) => yM > topM && yM < next.bottomM) ? [{ bottomM: topM, topM: next.bottomM }] : [];
  });
}

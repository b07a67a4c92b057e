import { type FillEffect, fillEffect } from '../acoustics/fill/index.ts';
import type { ViscousAir } from '../acoustics/viscousAir.ts';
import { chamberHeights, clearDepthM, spaceBetweenM3 } from '../document/insideSpace.ts';
import type { Chamber, Enclosure, Project } from '../document/schema.ts';
import type { ChamberVolume } from './chamberVolume.ts';
import { fillOf } from './fillOf.ts';
import type { ChamberFilling, ModelChamber } from './model.ts';

/** Where the apparent volume of a filled chamber is stated, since it depends on frequency. */
export const APPARENT_AT_HZ = 50;
/** A lining takes at most this share of its chamber: beyond, the layers of opposite walls meet. */
const MOST_LINED = 0.9;

/** The chambers of a cabinet with what their filling does. */
export function readChambers(
  { enclosure }: Pick<Project, 'enclosure'>,
  volumes: ReadonlyMap<string, ChamberVolume>,
  air: ViscousAir,
): ModelChamber[] {
  return enclosure.chambers.map((chamber) => {
    const { netM3, apparentM3 } = volumes.get(chamber.id)!;
    const plain = { id: chamber.id, leak: chamber.leak, absorption: chamber.absorption };
    const filling = fillingIn(chamber, enclosure, netM3, air);
    if (filling === null) return { ...plain, volumeM3: apparentM3 };
    return { ...plain, volumeM3: netM3 * fillingGain(filling, air), filling };
  });
}

/** Apparent over net volume at `APPARENT_AT_HZ` that a filling gives. */
export const fillingGain = (filling: ChamberFilling, air: ViscousAir): number => fillingEffect(filling, air).volumeGain;

/** Gain of volume and quality factor of the air at `APPARENT_AT_HZ` that a filling gives; a lining counts as a layer before a wall. */
export function fillingEffect({ netM3, placing, fill }: ChamberFilling, air: ViscousAir): FillEffect {
  const share = placing.kind === 'stuffed' ? placing.share : (placing.areaM2 * placing.thicknessM) / netM3;
  // A layer's own drag is that of its thickness on its area: the chamber's depth is then its volume over that area.
  const depthM = placing.kind === 'stuffed' ? placing.depthM : netM3 / placing.areaM2;
  const chamber = { volumeM3: netM3, fill, share, depthM, held: true, absorption: null };
  return fillEffect(chamber, air, 2 * Math.PI * APPARENT_AT_HZ);
}

/** What the circuit needs to know of a chamber's filling; null where its gain is stated instead. */
export function fillingIn(
  chamber: Chamber,
  enclosure: Enclosure,
  netM3: number,
  air: ViscousAir,
): ChamberFilling | null {
  const { filling } = chamber;
  if (filling === null || !(netM3 > 0)) return null;
  const fill = fillOf(filling, air);
  const { depthM, wallsM2 } = insideOf(chamber, enclosure, netM3);
  if (filling.placing.kind === 'stuffed') {
    return { netM3, fill, placing: { kind: 'stuffed', share: filling.placing.share, depthM } };
  }
  const thicknessM = Math.min(filling.placing.thicknessM, (MOST_LINED * netM3) / wallsM2);
  return { netM3, fill, placing: { kind: 'lined', areaM2: wallsM2, thicknessM } };
}

/** Depth from front to back at middle height and area of all walls but the front; of a stated volume those of a cube. */
function insideOf(chamber: Chamber, enclosure: Enclosure, netM3: number): { depthM: number; wallsM2: number } {
  if (chamber.volume.kind === 'stated') return { depthM: Math.cbrt(netM3), wallsM2: 5 * Math.cbrt(netM3) ** 2 };
  const { bottomM, topM } = chamberHeights(chamber, enclosure);
  const middleM = (bottomM + topM) / 2;
  const clearM = clearDepthM(enclosure, middleM);
  const depthM = Math.min(chamber.volume.depthM ?? clearM, clearM);
  const height = topM - bottomM;
  const widthM = spaceBetweenM3(enclosure, bottomM, topM, depthM) / (depthM * height);
  return { depthM, wallsM2: widthM * height + 2 * depthM * (widthM + height) };
}

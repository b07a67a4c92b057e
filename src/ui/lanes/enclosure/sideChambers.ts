import type { Chamber, Enclosure } from '../../../core/document/schema.ts';

/** Where a chamber lies in the side view: behind the front plane and above the outer bottom, m. */
export interface SideChamber {
  readonly id: string;
  readonly frontM: number;
  readonly backM: number;
  readonly bottomM: number;
  readonly topM: number;
  /** A stated volume has no place of its own: it is drawn as a slice of the full depth behind its driver. */
  readonly stated: boolean;
}

/** A wall inside the cabinet, in the same coordinates. */
export interface Partition {
  readonly frontM: number;
  readonly backM: number;
  readonly bottomM: number;
  readonly topM: number;
}

/** The chambers' outlines in the side view. */
export function sideChambers(enclosure: Enclosure): SideChamber[] {
  return enclosure.chambers.map((chamber) => outline(chamber, enclosure));
}

function outline(chamber: Chamber, enclosure: Enclosure): SideChamber {
  const { panelM, heightM, depthM, widthM } = enclosure;
  const innerTop = heightM - panelM;
  const clearDepth = depthM - 2 * panelM;
  if (chamber.volume.kind === 'geometry') {
    const depth = Math.min(chamber.volume.depthM ?? clearDepth, clearDepth);
    return {
      id: chamber.id,
      frontM: panelM,
      backM: panelM + Math.max(0, depth),
      bottomM: Math.max(panelM, Math.min(innerTop, chamber.volume.bottomM)),
      topM: Math.max(panelM, Math.min(innerTop, chamber.volume.topM)),
      stated: false,
    };
  }
  const sliceM2 = Math.max(1e-4, (widthM - 2 * panelM) * clearDepth);
  const tall = Math.min(innerTop - panelM, chamber.volume.grossM3 / sliceM2);
  const mounts = enclosure.mounts.filter((mount) => mount.chamberId === chamber.id);
  const ports = enclosure.ports.filter((port) => port.chamberId === chamber.id);
  const heights = [...mounts, ...ports].map((thing) => thing.yM);
  const middle = heights.length > 0 ? heights.reduce((a, b) => a + b, 0) / heights.length : heightM / 2;
  const bottomM = Math.max(panelM, Math.min(innerTop - tall, middle - tall / 2));
  return { id: chamber.id, frontM: panelM, backM: depthM - panelM, bottomM, topM: bottomM + tall, stated: true };
}

/** Walls at the bounds of chambers that do not fill the cabinet; two chambers that meet share one. */
export function partitions(enclosure: Enclosure): Partition[] {
  const { panelM, heightM, depthM } = enclosure;
  const walls: Partition[] = [];
  const floors = new Set<string>();
  for (const chamber of sideChambers(enclosure)) {
    if (chamber.stated) continue;
    const back = Math.min(chamber.backM + (chamber.backM < depthM - panelM ? panelM : 0), depthM - panelM);
    const across = { frontM: panelM, backM: back };
    const add = (bottomM: number, topM: number) => {
      const key = `${Math.round(bottomM * 500)}`;
      if (floors.has(key)) return;
      floors.add(key);
      walls.push({ ...across, bottomM, topM });
    };
    if (chamber.bottomM > panelM + 1e-6) add(Math.max(panelM, chamber.bottomM - panelM), chamber.bottomM);
    if (chamber.topM < heightM - panelM - 1e-6) {
      add(chamber.topM, Math.min(heightM - panelM, chamber.topM + panelM));
    }
    if (chamber.backM < depthM - panelM - 1e-6) {
      walls.push({ frontM: chamber.backM, backM: back, bottomM: chamber.bottomM, topM: chamber.topM });
    }
  }
  return walls;
}

import {
  chamberHeights,
  clearDepthM,
  clearHeights,
  sliceM2,
  thicknessOfM,
} from '../../../core/document/insideSpace.ts';
import type { Chamber, Enclosure } from '../../../core/document/schema.ts';

/** Where a chamber lies in the side view: behind the foremost edge and above the outer bottom, m. */
export interface SideChamber {
  readonly id: string;
  /** At its middle height, where the front leans. */
  readonly frontM: number;
  readonly backM: number;
  readonly bottomM: number;
  readonly topM: number;
  /** A stated volume has no place of its own: it is drawn as a slice of the full depth near what is mounted on it. */
  readonly stated: boolean;
  /** Stated volumes that are more than the cabinet holds are drawn smaller than they are. */
  readonly squeezed: boolean;
}

/** A board inside the cabinet, in the same coordinates. */
export interface Partition {
  readonly frontM: number;
  readonly backM: number;
  readonly bottomM: number;
  readonly topM: number;
  /** Of a level board: the chambers whose top and whose bottom it is; null: unused space. */
  readonly below: string | null;
  readonly above: string | null;
  /** Of an upright board: the chamber that it ends. */
  readonly behind: string | null;
}

/** Bounds closer than this to one another or to a wall meet. */
const MEETS_M = 5e-4;

/** The chambers' outlines in the side view. */
export function sideChambers(enclosure: Enclosure): SideChamber[] {
  const stated = statedSlices(enclosure);
  return enclosure.chambers.map((chamber) => stated.get(chamber.id) ?? placed(chamber, enclosure));
}

function placed(chamber: Chamber, enclosure: Enclosure): SideChamber {
  const { bottomM, topM } = chamberHeights(chamber, enclosure);
  const depthM = chamber.volume.kind === 'geometry' ? chamber.volume.depthM : null;
  const bounds = { id: chamber.id, bottomM, topM: Math.max(bottomM, topM), stated: false, squeezed: false };
  return { ...bounds, ...depths((bottomM + topM) / 2, depthM, enclosure) };
}

function depths(yM: number, depthM: number | null, enclosure: Enclosure): { frontM: number; backM: number } {
  const clear = clearDepthM(enclosure, yM);
  const frontM = enclosure.depthM - thicknessOfM(enclosure, 'back') - clear;
  return { frontM, backM: frontM + Math.min(depthM ?? clear, clear) };
}

/** Stated volumes as slices about the height of what belongs to them, from the bottom up and none over another. */
function statedSlices(enclosure: Enclosure): Map<string, SideChamber> {
  const clear = clearHeights(enclosure);
  const room = Math.max(0.01, clear.topM - clear.bottomM);
  const wanted = enclosure.chambers.flatMap((chamber, k) => {
    if (chamber.volume.kind !== 'stated') return [];
    const middle = middleOf(chamber.id, enclosure);
    const tall = chamber.volume.grossM3 / Math.max(1e-4, sliceM2(enclosure, middle, null));
    return [{ id: chamber.id, middle, tall, k }];
  });
  wanted.sort((a, b) => a.middle - b.middle || b.k - a.k);
  const total = wanted.reduce((sum, { tall }) => sum + tall, 0);
  const share = Math.min(1, room / total);
  const bottoms: number[] = [];
  let floor = clear.bottomM;
  for (const { middle, tall } of wanted) {
    bottoms.push(Math.max(floor, middle - (tall * share) / 2));
    floor = bottoms.at(-1)! + tall * share;
  }
  let ceiling = clear.topM;
  for (let i = wanted.length - 1; i >= 0; i--) {
    bottoms[i] = Math.min(bottoms[i]!, ceiling - wanted[i]!.tall * share);
    ceiling = bottoms[i]!;
  }
  return new Map(
    wanted.map(({ id, tall }, i) => {
      const bottomM = bottoms[i]!;
      const topM = bottomM + tall * share;
      const bounds = { id, bottomM, topM, stated: true, squeezed: share < 1 };
      return [id, { ...bounds, ...depths((bottomM + topM) / 2, null, enclosure) }];
    }),
  );
}

/** Mean height of what is mounted on a chamber. */
function middleOf(chamberId: string, enclosure: Enclosure): number {
  const { mounts, ports, passiveRadiators, lines, heightM } = enclosure;
  const heights = [
    ...mounts.filter((mount) => mount.chamberId === chamberId || mount.frontChamberId === chamberId),
    ...ports.filter((port) => port.chamberId === chamberId),
    ...passiveRadiators.filter((radiator) => radiator.chamberId === chamberId),
    ...lines.flatMap((line) => (line.chamberId === chamberId && line.end.kind === 'open' ? [line.end] : [])),
  ].map((thing) => thing.yM);
  return heights.length > 0 ? heights.reduce((a, b) => a + b, 0) / heights.length : heightM / 2;
}

/**
 * The boards at the bounds of chambers that do not fill the cabinet. A gap of at most two panels between chambers is one board as
 * thick as the gap, a wider one a space between two boards: the same boards as in the cut list.
 */
export function partitions(enclosure: Enclosure): Partition[] {
  const { panelM } = enclosure;
  const clear = clearHeights(enclosure);
  const stack = sideChambers(enclosure)
    .filter(({ stated }) => !stated)
    .sort((a, b) => a.bottomM - b.bottomM);
  const boards: Partition[] = [];
  const level = (bottomM: number, topM: number, below: string | null, above: string | null) => {
    const across = depths((bottomM + topM) / 2, null, enclosure);
    boards.push({ ...across, bottomM, topM, below, above, behind: null });
  };
  let reachedM = clear.bottomM;
  let lower: string | null = null;
  for (const { id, bottomM, topM } of stack) {
    const gap = bottomM - reachedM;
    if (gap > MEETS_M && lower !== null && gap <= 2 * panelM) level(reachedM, bottomM, lower, id);
    else if (gap > MEETS_M) {
      if (lower !== null) level(reachedM, reachedM + panelM, lower, null);
      level(Math.max(clear.bottomM, bottomM - panelM), bottomM, null, id);
    }
    reachedM = Math.max(reachedM, topM);
    lower = id;
  }
  if (lower !== null && clear.topM - reachedM > panelM + MEETS_M) level(reachedM, reachedM + panelM, lower, null);
  for (const { id, bottomM, topM, backM } of stack) {
    const wall = enclosure.depthM - thicknessOfM(enclosure, 'back');
    if (backM > wall - panelM - MEETS_M) continue;
    boards.push({ frontM: backM, backM: backM + panelM, bottomM, topM, below: null, above: null, behind: id });
  }
  return boards;
}

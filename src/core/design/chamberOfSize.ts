import type { Chamber, Project } from '../document/schema.ts';

export interface SizedChamber {
  readonly volume: Chamber['volume'];
  /** What changes: the stated number, or one of the bounds. */
  readonly by: 'stated' | 'top' | 'bottom';
}

/** Bounds land on 10 µm, so that even a low chamber keeps its volume within 0.1 %. */
const STEPS_PER_M = 1e5;
const CLOSE_M = 1e-9;

/**
 * A chamber's volume for a wished gross size, m³: the number itself where it is stated, else its top moved, or its bottom where
 * the top cannot. A bound stays inside the cabinet, one panel away from the chambers above and below, and does not pass the
 * centre of a driver or a port that is inside now. null where neither bound can move so far.
 * @example chamberOfSize(project, chamber, 0.04)?.by
 */
export function chamberOfSize({ enclosure }: Project, chamber: Chamber, grossM3: number): SizedChamber | null {
  const { volume } = chamber;
  if (volume.kind === 'stated') return { volume: { kind: 'stated', grossM3 }, by: 'stated' };
  const { panelM, widthM, heightM, depthM } = enclosure;
  const clearDepthM = depthM - 2 * panelM;
  const sliceM2 = (widthM - 2 * panelM) * Math.min(volume.depthM ?? clearDepthM, clearDepthM);
  if (!(sliceM2 > 0)) return null;
  const tallM = grossM3 / sliceM2;
  const bottomM = Math.max(volume.bottomM, panelM);
  const topM = Math.min(volume.topM, heightM - panelM);
  let floorM = panelM;
  let ceilingM = heightM - panelM;
  for (const other of enclosure.chambers) {
    if (other.id === chamber.id || other.volume.kind === 'stated') continue;
    if (other.volume.topM <= bottomM) floorM = Math.max(floorM, other.volume.topM + panelM);
    if (other.volume.bottomM >= topM) ceilingM = Math.min(ceilingM, other.volume.bottomM - panelM);
  }
  const inside = [...enclosure.mounts, ...enclosure.ports]
    .filter(({ chamberId, yM }) => chamberId === chamber.id && yM >= bottomM && yM <= topM)
    .map(({ yM }) => yM);
  const movedTopM = rounded(bottomM + tallM);
  if (movedTopM <= ceilingM + CLOSE_M && inside.every((yM) => yM <= movedTopM)) {
    return { volume: { ...volume, topM: movedTopM }, by: 'top' };
  }
  const movedBottomM = rounded(topM - tallM);
  if (movedBottomM >= floorM - CLOSE_M && inside.every((yM) => yM >= movedBottomM)) {
    return { volume: { ...volume, bottomM: movedBottomM }, by: 'bottom' };
  }
  return null;
}

const rounded = (m: number): number => Math.round(m * STEPS_PER_M) / STEPS_PER_M;

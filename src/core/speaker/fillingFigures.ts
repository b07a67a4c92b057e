import { airProperties } from '../acoustics/index.ts';
import { viscousAir } from '../acoustics/viscousAir.ts';
import type { Chamber, Project } from '../document/schema.ts';
import { chamberVolume } from './chamberVolume.ts';
import { APPARENT_AT_HZ, fillingEffect, fillingIn } from './readChambers.ts';

/** What a chamber's filling does and what it takes, for people to read. */
export interface FillingFigures {
  /** Where gain and Q hold, Hz. */
  readonly atHz: number;
  /** Apparent over net volume. */
  readonly volumeGain: number;
  /** Quality factor of the chamber's air, heat and friction together. */
  readonly airQ: number;
  /** As stated, else estimated from material and density, Pa·s/m². */
  readonly resistivityPaSPerM2: number;
  /** Share of the net volume that is filled. */
  readonly share: number;
  /** What to weigh out, kg. */
  readonly massKg: number;
}

/**
 * Gain of volume, quality factor of the air, share and weight of a chamber's filling; null where its gain is stated or no air is left.
 *
 * The figures of a lining take it as a layer before a wall, as the apparent volume does. Range and sources: `fillEffect`.
 * @example fillingFigures(project, chamber)?.volumeGain
 */
export function fillingFigures(project: Project, chamber: Chamber): FillingFigures | null {
  const { netM3 } = chamberVolume(project, chamber);
  const air = airProperties(project.air);
  if (!air.ok || chamber.filling === null) return null;
  const viscous = viscousAir(air.value, project.air.temperatureC);
  const filling = fillingIn(chamber, project.enclosure, netM3, viscous);
  if (filling === null) return null;
  const { placing } = filling;
  const share = placing.kind === 'stuffed' ? placing.share : (placing.areaM2 * placing.thicknessM) / netM3;
  return {
    atHz: APPARENT_AT_HZ,
    ...fillingEffect(filling, viscous),
    resistivityPaSPerM2: filling.fill.resistivityPaSPerM2,
    share,
    massKg: share * netM3 * chamber.filling.densityKgPerM3,
  };
}

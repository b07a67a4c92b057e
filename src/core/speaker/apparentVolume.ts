import { airProperties } from '../acoustics/index.ts';
import { viscousAir } from '../acoustics/viscousAir.ts';
import type { Chamber, Project } from '../document/schema.ts';
import { chamberVolume } from './chamberVolume.ts';
import { fillingGain, fillingIn } from './readChambers.ts';

/**
 * What the circuit sees of a chamber, m³: its net volume times what its filling gains, as stated or as computed at 50 Hz.
 *
 * Not above 0 where nothing is left of the chamber, which a caller must refuse.
 * @example apparentVolumeM3(project, project.enclosure.chambers[0])
 */
export function apparentVolumeM3(project: Project, chamber: Chamber): number {
  const { netM3, apparentM3 } = chamberVolume(project, chamber);
  const air = airProperties(project.air);
  if (!air.ok) return apparentM3;
  const viscous = viscousAir(air.value, project.air.temperatureC);
  const filling = fillingIn(chamber, project.enclosure, netM3, viscous);
  return filling === null ? apparentM3 : netM3 * fillingGain(filling, viscous);
}

import type { Chamber, Project } from '../document/schema.ts';
import { type Result, succeed } from '../messages/problem.ts';
import { apparentVolumeM3 } from '../speaker/apparentVolume.ts';
import { chamberVolume } from '../speaker/chamberVolume.ts';
import { derivedOf } from '../speaker/derivedOf.ts';
import { sealedForQtc } from './alignments/sealedAlignment.ts';
import { chamberOfSize, type SizedChamber } from './chamberOfSize.ts';
import { sizeForApparent } from './sizeForApparent.ts';

export interface SealedWishAnswer {
  /** What the chamber would hold net, m³. */
  readonly netM3: number;
  /** The chamber's volume that gives it, or what is in the way of its bounds. */
  readonly sized: Result<SizedChamber>;
}

/**
 * The volume that gives the drivers of a sealed chamber a wished Qtc: the apparent volume of the alignment, less what the
 * filling gains, plus what drivers and braces take. Drivers in one chamber count as equal. null without a readable driver.
 */
export function sealedWishFor(project: Project, chamber: Chamber, qtc: number): Result<SealedWishAnswer> | null {
  const { enclosure, network, drivers } = project;
  const inside = enclosure.mounts.filter((mount) => mount.chamberId === chamber.id);
  const part = network.parts.find((candidate) => candidate.id === inside[0]?.partId);
  const driver = part?.kind === 'speaker' ? drivers.find((candidate) => candidate.id === part.driverId) : undefined;
  const read = driver && derivedOf(driver);
  if (!read?.ok) return null;
  const { fsHz, qts, vasM3 } = read.value.derived;
  const found = sealedForQtc({ fsHz, qts, vasM3: vasM3 * inside.length }, qtc);
  if (!found.ok) return found;
  const { grossM3, netM3: presentM3 } = chamberVolume(project, chamber);
  const gain = presentM3 > 0 ? apparentVolumeM3(project, chamber) / presentM3 : chamber.fillGain;
  const size = sizeForApparent(project, chamber, found.value.volumeM3);
  if (size.ok) return succeed({ netM3: size.value.netM3, sized: succeed(size.value.sized) });
  const netM3 = found.value.volumeM3 / gain;
  return succeed({ netM3, sized: chamberOfSize(project, chamber, netM3 + grossM3 - presentM3) });
}

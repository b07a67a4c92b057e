import { sealedForQtc } from '../../../core/design/alignments/sealedAlignment.ts';
import type { Chamber, Project } from '../../../core/document/schema.ts';
import { type Result, succeed } from '../../../core/messages/problem.ts';
import { chamberVolume } from '../../../core/speaker/chamberVolume.ts';
import { readDriver } from '../driver/readDriver.ts';

export interface SealedWishAnswer {
  /** What the chamber would hold net, m³. */
  readonly netM3: number;
  /** The chamber's volume that gives it; null where its bounds would leave the cabinet. */
  readonly volume: Chamber['volume'] | null;
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
  const read = driver && readDriver(driver);
  if (!read?.ok) return null;
  const { fsHz, qts, vasM3 } = read.value.derived;
  const found = sealedForQtc({ fsHz, qts, vasM3: vasM3 * inside.length }, qtc);
  if (!found.ok) return found;
  const now = chamberVolume(project, chamber);
  const netM3 = found.value.volumeM3 / chamber.fillGain;
  const grossM3 = netM3 + (now.grossM3 - now.netM3);
  const { volume } = chamber;
  if (volume.kind === 'stated') return succeed({ netM3, volume: { kind: 'stated', grossM3 } });
  const sliceM2 = now.grossM3 / (volume.topM - volume.bottomM);
  const topM = Math.round((volume.bottomM + grossM3 / sliceM2) * 1e4) / 1e4;
  const fits = topM <= enclosure.heightM - enclosure.panelM;
  return succeed({ netM3, volume: fits ? { ...volume, topM } : null });
}

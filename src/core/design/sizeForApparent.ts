import type { Chamber, Project } from '../document/schema.ts';
import { fail, problem, type Result, succeed } from '../messages/problem.ts';
import { apparentVolumeM3 } from '../speaker/apparentVolume.ts';
import { chamberVolume } from '../speaker/chamberVolume.ts';
import { chamberOfSize, type SizedChamber } from './chamberOfSize.ts';

export interface ApparentSize {
  readonly netM3: number;
  readonly sized: SizedChamber;
}

const ROUNDS = 8;
/** Well within the 0.1 % of bounds that land on 10 µm. */
const CLOSE = 1e-5;

/**
 * A chamber's size for a wished apparent volume, m³, with all that stands in it now, and the net volume that goes with it.
 *
 * A filling's gain depends a little on the size that it fills, so that size is corrected until it no longer changes. Problems: those of
 * `chamberOfSize`; `design.no-air-left` for a wish that is not above 0.
 * @example sizeForApparent(project, chamber, 0.03)
 */
export function sizeForApparent(project: Project, chamber: Chamber, apparentM3: number): Result<ApparentSize> {
  if (!(apparentM3 > 0 && Number.isFinite(apparentM3))) {
    const values = Number.isFinite(apparentM3) ? { volumeM3: apparentM3 } : {};
    return fail(problem('design.no-air-left', { kind: 'chamber', id: chamber.id }, values));
  }
  const { grossM3, netM3: net } = chamberVolume(project, chamber);
  const takenM3 = grossM3 - net;
  const gain = net > 0 ? apparentVolumeM3(project, chamber) / net : chamber.fillGain;
  let netM3 = apparentM3 / gain;
  for (let k = 0; ; k++) {
    const sized = chamberOfSize(project, chamber, netM3 + takenM3);
    if (!sized.ok) return sized;
    const ratio = apparentM3 / apparentVolumeM3(project, { ...chamber, volume: sized.value.volume });
    if (k === ROUNDS || Math.abs(ratio - 1) < CLOSE || chamber.filling === null) {
      return succeed({ netM3, sized: sized.value });
    }
    netM3 *= ratio;
  }
}

import type { AirProperties } from '../acoustics/airProperties.ts';
import { radiatorTuningHz } from '../acoustics/radiatorTuning.ts';
import type { PassiveRadiator, Project } from '../document/schema.ts';
import { fail, problem, type Result, succeed } from '../messages/problem.ts';
import { apparentVolumeM3 } from '../speaker/apparentVolume.ts';

/**
 * Mass to add to each radiator of a kind so that it tunes its chamber, kg: added = Mms ((f0/fB)² − 1), f0 the tuning of the bare ones.
 *
 * From M = (Sd²/Cab + 1/Cms)/(2πfB)²: the spring (air and suspension) stays, so the tuning falls with √M. Apparent volume, losses left out. A
 * tuning above f0 is the Problem `acoustics.radiator-too-heavy`, one that is not above 0 `acoustics.no-tuning-asked`. null where other
 * radiators, ports or lines share the chamber, or no air is left. Source: as `radiatorTuningHz`.
 *
 * Example: bare radiators that tune to 40 Hz need three times their own mass besides for 20 Hz
 */
export function massForTuning(
  project: Project,
  radiator: PassiveRadiator,
  tuningHz: number,
  air: AirProperties,
): Result<number> | null {
  const { chambers, ports, passiveRadiators, lines } = project.enclosure;
  const chamber = chambers.find(({ id }) => id === radiator.chamberId);
  const here = ({ chamberId }: { readonly chamberId: string }) => chamberId === radiator.chamberId;
  const inwards = ports.some(({ toChamberId }) => toChamberId === radiator.chamberId);
  if (!chamber || inwards || ports.some(here) || lines.some(here) || passiveRadiators.filter(here).length !== 1) {
    return null;
  }
  const volumeM3 = apparentVolumeM3(project, chamber);
  if (!(volumeM3 > 0)) return null;
  const place = { kind: 'radiator', id: radiator.id } as const;
  if (!(tuningHz > 0 && Number.isFinite(tuningHz))) return fail(problem('acoustics.no-tuning-asked', place));
  const highestHz = bareTuningHz(radiator, volumeM3, air);
  const addedKg = radiator.mmsKg * ((highestHz / tuningHz) ** 2 - 1);
  if (addedKg >= 0) return succeed(addedKg);
  return fail(problem('acoustics.radiator-too-heavy', place, { tuningHz, highestHz }));
}

/** Tuning of a chamber with these radiators and nothing added to them, Hz. */
export function bareTuningHz(
  { count, sdM2, mmsKg, fsHz }: PassiveRadiator,
  apparentM3: number,
  air: AirProperties,
): number {
  const moving = {
    sdM2: count * sdM2,
    mmsKg: count * mmsKg,
    cmsMPerN: 1 / ((2 * Math.PI * fsHz) ** 2 * mmsKg * count),
  };
  return radiatorTuningHz(moving, apparentM3, air);
}

/** Where the sum has its notch, Hz: the resonance of the loaded radiator in free air, fs √(Mms/(Mms + added)). */
export const notchHz = ({ fsHz, mmsKg, addedMassKg }: PassiveRadiator): number =>
  fsHz * Math.sqrt(mmsKg / (mmsKg + addedMassKg));

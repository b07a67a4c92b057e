import type { AirProperties } from '../../acoustics/airProperties.ts';
import { chamberComplianceM3PerPa } from '../../acoustics/chamber.ts';
import type { Command } from '../../document/command.ts';
import type { PassiveRadiator, Project } from '../../document/schema.ts';
import { newRadiator } from '../../document/start/newRadiator.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { apparentVolumeM3 } from '../../speaker/apparentVolume.ts';
import { readModel } from '../../speaker/readModel.ts';
import { chamberTuning } from '../chamberTuning.ts';
import { massForTuning } from '../massForTuning.ts';
import { emptied } from './emptied.ts';
import { wayOf } from './wayOf.ts';

/** Of the whole moving mass, where the rest is added. */
const OWN_SHARE = 0.75;
/** Grams are weighed out, not fractions of them. */
const MASS_STEPS_PER_KG = 1e4;

/**
 * The command that puts a passive radiator in the place of whatever opens a driver's chamber, loaded so that the chamber keeps its tuning;
 * a chamber without one is tuned to the driver's fs.
 *
 * The radiator is the invented one to start from, made smaller where the cabinet is narrower than it, and lighter where even bare it would tune
 * lower than asked. It goes on the back, behind the driver. `design.needs-chamber` without a chamber.
 * @example radiatorStart(project, 'LS1')
 */
export function radiatorStart(project: Project, partId: string): Result<Command> {
  const way = wayOf(project, partId);
  if (!way.ok) return way;
  const { mount, figures, air } = way.value;
  const { enclosure } = project;
  const chamberId = mount.chamberId;
  if (chamberId === null) {
    return fail(problem('design.needs-chamber', { kind: 'mount', id: partId }, { name: partId }));
  }
  const read = readModel(project);
  const present = read.ok ? chamberTuning(read.value.model, chamberId).tuningHz : null;
  const start = fitted(newRadiator(project, chamberId), enclosure.widthM - 2 * enclosure.panelM);
  const bare: PassiveRadiator = { ...start, face: 'back', xM: 0, yM: clampM(mount.yM, start, enclosure.heightM) };
  const alone: Project = {
    ...project,
    enclosure: {
      ...enclosure,
      ports: enclosure.ports.filter((port) => port.chamberId !== chamberId && port.toChamberId !== chamberId),
      lines: enclosure.lines.filter(
        ({ chamberId: from, end }) => from !== chamberId && !(end.kind === 'chamber' && end.chamberId === chamberId),
      ),
      passiveRadiators: [...enclosure.passiveRadiators.filter((other) => other.chamberId !== chamberId), bare],
    },
  };
  const tuningHz = present ?? figures.fsHz;
  const mass = massForTuning(alone, bare, tuningHz, air);
  const loaded = mass?.ok
    ? { ...bare, addedMassKg: Math.round(mass.value * MASS_STEPS_PER_KG) / MASS_STEPS_PER_KG }
    : lightened(
        bare,
        tuningHz,
        apparentVolumeM3(alone, alone.enclosure.chambers.find(({ id }) => id === chamberId)!),
        air,
      );
  const commands: Command[] = [...emptied(project, chamberId), { type: 'add-radiator', radiator: loaded }];
  return succeed({ type: 'together', commands });
}

/** The same with so much less mass that a quarter of what tunes the chamber is added to it; as it is where it is too soft for that. */
function lightened(radiator: PassiveRadiator, tuningHz: number, volumeM3: number, air: AirProperties): PassiveRadiator {
  const spring = radiator.sdM2 ** 2 / chamberComplianceM3PerPa(volumeM3, air);
  const square = (2 * Math.PI) ** 2 * (tuningHz ** 2 - OWN_SHARE * radiator.fsHz ** 2);
  const wholeKg = spring / square;
  if (!(wholeKg > 0 && Number.isFinite(wholeKg))) return radiator;
  return { ...radiator, mmsKg: wholeKg * OWN_SHARE, addedMassKg: wholeKg * (1 - OWN_SHARE) };
}

/** No wider than the panel that it goes into; area and mass shrink with it as they usually do (common practice, no source). */
function fitted(radiator: PassiveRadiator, clearM: number): PassiveRadiator {
  const ratio = Math.min(1, Math.floor(1000 * clearM * 0.95) / 1000 / radiator.outerDiameterM);
  if (ratio === 1) return radiator;
  const shown = (value: number): number => Number(value.toPrecision(3));
  return {
    ...radiator,
    outerDiameterM: shown(radiator.outerDiameterM * ratio),
    sdM2: shown(radiator.sdM2 * ratio ** 2),
    mmsKg: shown(radiator.mmsKg * ratio ** 2),
  };
}

const clampM = (yM: number, { outerDiameterM }: PassiveRadiator, heightM: number): number => {
  const reach = Math.min(outerDiameterM / 2, heightM / 2);
  return Math.min(heightM - reach, Math.max(reach, yM));
};

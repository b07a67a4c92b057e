import { leastPortDiameterM } from '../../acoustics/port/leastPortSize.ts';
import { portDisplacementM3 } from '../../acoustics/port/portDisplacement.ts';
import { portLengthForTuning } from '../../acoustics/port/portTuning.ts';
import type { Command } from '../../document/command.ts';
import type { Chamber, Port, Project } from '../../document/schema.ts';
import { newChamber } from '../../document/start/newChamber.ts';
import { newPort } from '../../document/start/newPort.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { apparentVolumeM3 } from '../../speaker/apparentVolume.ts';
import { driverOf } from '../keyFigures.ts';
import { wayOf } from './wayOf.ts';

/** Shape S at which the band stays flat (common practice, no source). */
const FLAT_S = 0.7;
const TUBE_STEP_M = 0.005;
const LEAST_TUBE_M = 0.025;
const LENGTH_STEPS_PER_M = 1e4;
/** A new rear chamber as a share of Vas: resonance at twice fs. */
const REAR_OVER_VAS = 1 / 3;

/**
 * The command that makes a band-pass of a driver's box: a front chamber with a port to the outside, before this driver and its equals on
 * the same rear chamber.
 *
 * The front is tuned to the resonance of the drivers on the rear chamber, fs √(1 + Vas/Vr), and holds (2 S QT)² Vas with S = 0.7; its port is
 * as wide as the stroke asks and as the length leaves. Without a rear chamber one of Vas/3 comes too. A rear chamber with ports keeps
 * them, which makes a sixth-order box. `design.no-band-pass-port` where no tube of 25 mm or more tunes so high. Source: as `bandPassForLower`.
 * @example bandPassStart(project, 'LS1')
 */
export function bandPassStart(project: Project, partId: string): Result<Command> {
  const way = wayOf(project, partId);
  if (!way.ok) return way;
  const { mount, driver, parameters, figures, air } = way.value;
  const { enclosure } = project;
  const rear = enclosure.chambers.find(({ id }) => id === mount.chamberId);
  const own = enclosure.mounts.filter(
    (other) =>
      other === mount ||
      (rear !== undefined && other.chamberId === rear.id && driverOf(project, other.partId) === driver),
  );
  const vasM3 = figures.vasM3 * own.length;
  const newRear: Chamber | null = rear
    ? null
    : {
        ...newChamber(project),
        name: 'Rear chamber',
        volume: { kind: 'stated', grossM3: rounded(vasM3 * REAR_OVER_VAS + driver.displacementM3) },
      };
  const rearM3 = rear ? apparentVolumeM3(project, rear) : vasM3 * REAR_OVER_VAS;
  if (!(rearM3 > 0)) {
    return fail(problem('design.no-air-left', { kind: 'chamber', id: rear?.id ?? '' }, { volumeM3: rearM3 }));
  }
  const grown = newRear
    ? { ...project, enclosure: { ...enclosure, chambers: [...enclosure.chambers, newRear] } }
    : project;
  const tuningHz = figures.fsHz * Math.sqrt(1 + vasM3 / rearM3);
  const frontM3 = (2 * FLAT_S * figures.qts) ** 2 * vasM3;
  const front = newChamber(grown);
  const sweptM3 = own.length * parameters.sdM2 * (driver.entered.xmaxM ?? 0);
  const port = tubeFor(newPort(project, front.id), tuningHz, frontM3, sweptM3, air.soundSpeedMPerS);
  if (port === null) {
    return fail(problem('design.no-band-pass-port', { kind: 'mount', id: partId }, { tuningHz, volumeM3: frontM3 }));
  }
  const takenM3 = portDisplacementM3(port.shape, port.wallM, Math.max(0, port.lengthM - enclosure.panelM));
  const chamber: Chamber = {
    ...front,
    name: 'Front chamber',
    volume: { kind: 'stated', grossM3: rounded(frontM3 + takenM3) },
  };
  const behind = rear?.id ?? newRear?.id ?? null;
  const commands: Command[] = [
    ...(newRear ? [{ type: 'add-chamber', chamber: newRear } as const] : []),
    { type: 'add-chamber', chamber },
    ...own.map((each): Command => {
      const changes = { chamberId: behind, frontChamberId: chamber.id, back: 'closed' } as const;
      return { type: 'set-mount', partId: each.partId, changes };
    }),
    { type: 'add-port', port },
  ];
  return succeed({ type: 'together', commands });
}

/** The widest tube, from the one that the stroke asks for downwards, of which some length tunes the front chamber. */
function tubeFor(
  bare: Port,
  tuningHz: number,
  volumeM3: number,
  sweptM3: number,
  soundSpeedMPerS: number,
): Port | null {
  const wished = sweptM3 > 0 ? leastPortDiameterM(tuningHz, sweptM3) : 2 * TUBE_STEP_M * 5;
  for (
    let k = Math.max(LEAST_TUBE_M / TUBE_STEP_M, Math.ceil(wished / TUBE_STEP_M));
    k * TUBE_STEP_M >= LEAST_TUBE_M - 1e-9;
    k--
  ) {
    const shape = { kind: 'round', diameterM: Number((k * TUBE_STEP_M).toFixed(3)) } as const;
    const found = portLengthForTuning({ ...bare, shape }, tuningHz, volumeM3, soundSpeedMPerS);
    if (!found.ok || found.value < shape.diameterM / 4) continue;
    return { ...bare, shape, lengthM: Math.round(found.value * LENGTH_STEPS_PER_M) / LENGTH_STEPS_PER_M };
  }
  return null;
}

/** To 10 ml, so that the number can be read. */
const rounded = (m3: number): number => Math.ceil(m3 * 1e5) / 1e5;

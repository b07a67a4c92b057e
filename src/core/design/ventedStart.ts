import { airProperties } from '../acoustics/airProperties.ts';
import { driverFigures } from '../acoustics/driver/driverFigures.ts';
import { leastPortDiameterM } from '../acoustics/port/leastPortSize.ts';
import { portLengthForTuning } from '../acoustics/port/portTuning.ts';
import type { Command } from '../document/command.ts';
import { defaultLossQ } from '../document/defaults.ts';
import type { Chamber, Driver, Enclosure, Port, Project } from '../document/schema.ts';
import { newPort } from '../document/start/newPort.ts';
import { fail, problem, type Result, succeed } from '../messages/problem.ts';
import { chamberVolume } from '../speaker/chamberVolume.ts';
import { derivedOf } from '../speaker/derivedOf.ts';
import { type FlatVented, flatVentedAlignment } from './alignments/flatVentedAlignment.ts';
import { chamberOfSize, type SizedChamber } from './chamberOfSize.ts';

/** A flat vented box for a chamber as it stands in the document, and the command that makes it so. */
export interface VentedStart {
  readonly alignment: FlatVented;
  readonly ql: number;
  /** Whether QL is the chamber's own leak or the default. */
  readonly qlFrom: 'chamber' | 'default';
  /** Net volume that, with the gain of the filling, acts as the alignment's volume, m³. */
  readonly netM3: number;
  readonly sized: SizedChamber;
  readonly port: Port;
  /** Where a new port's diameter comes from: the driver's stroke, or a start where the driver states none; null: its own port. */
  readonly diameterFrom: 'stroke' | 'start' | null;
  readonly command: Command;
}

/** New tubes come in whole 5 mm, rounded up (common practice, no source). */
const TUBE_STEP_M = 0.005;
/** A port's length lands on 0.1 mm: well within 0.1 % of the tuning for anything that is a port. */
const LENGTH_STEPS_PER_M = 1e4;

/**
 * The flat vented box (`flatVentedAlignment`) for a chamber with one kind of driver in it, with volume and port fitted to the cabinet.
 *
 * QL is the chamber's own leak, else the default. A chamber without a port gets a round one on its back, as wide as
 * `leastPortDiameterM` asks; one with a kind of port keeps its section. The length follows from the apparent volume, which the
 * wish fixes, and the gross volume then takes the port of that length in: no rounds are needed. Several equal drivers count as one
 * with their Vas together. Net volume and tuning come out within 0.1 %. Problems: those of the alignment and of `portLengthForTuning`,
 * `design.several-ports`, `design.no-back`, `design.tube-too-wide`, `design.no-room`. null without drivers, with several kinds, or one not fully known.
 * @example ventedStart(project, project.enclosure.chambers[0])
 */
export function ventedStart(project: Project, chamber: Chamber): Result<VentedStart> | null {
  const inside = driversIn(project, chamber);
  const driver = inside[0];
  if (driver === undefined || inside.some((other) => other !== driver)) return null;
  const read = derivedOf(driver);
  const air = airProperties(project.air);
  if (!read.ok || !air.ok) return null;
  const ql = chamber.leak?.q ?? defaultLossQ.leak;
  const { fsHz, qts, vasM3 } = driverFigures(read.value.parameters, air.value);
  const aligned = flatVentedAlignment({ fsHz, qts, vasM3: vasM3 * inside.length }, ql);
  if (!aligned.ok) return aligned;
  const { volumeM3, tuningHz } = aligned.value;

  const present = project.enclosure.ports.filter((port) => port.chamberId === chamber.id);
  const place = { kind: 'chamber', id: chamber.id } as const;
  if (present.length > 1) return fail(problem('design.several-ports', place, { name: chamber.name }));
  if (present.length === 0 && endsBeforeBack(chamber, project.enclosure)) {
    return fail(problem('design.no-back', place, { name: chamber.name }));
  }
  const strokeM3 = inside.length * read.value.parameters.sdM2 * (driver.entered.xmaxM ?? 0);
  const bare = present[0] ?? portToStart(project, chamber, tuningHz, strokeM3);
  const { enclosure } = project;
  const clearM = Math.min(enclosure.widthM, enclosure.heightM) - 2 * enclosure.panelM;
  if (present.length === 0 && bare.shape.kind === 'round' && bare.shape.diameterM + 2 * bare.wallM > clearM) {
    const { diameterM } = bare.shape;
    return fail(problem('design.tube-too-wide', place, { name: chamber.name, diameterM, clearM }));
  }
  const length = portLengthForTuning(bare, tuningHz, volumeM3, air.value.soundSpeedMPerS);
  if (!length.ok) {
    return present.length === 0
      ? length
      : fail(...length.problems.map((p) => ({ ...p, place: { ...p.place, id: bare.id } })));
  }
  const port: Port = { ...bare, lengthM: Math.round(length.value * LENGTH_STEPS_PER_M) / LENGTH_STEPS_PER_M };

  const others = enclosure.ports.filter((other) => other.id !== port.id);
  const now = chamberVolume({ ...project, enclosure: { ...enclosure, ports: [...others, port] } }, chamber);
  const netM3 = volumeM3 / chamber.fillGain;
  const grossM3 = netM3 + (now.grossM3 - now.netM3);
  const sized = chamberOfSize(project, chamber, grossM3);
  if (!sized.ok) return sized;
  const { volume } = sized.value;
  const placed = present.length === 0 ? { ...port, yM: middleM(volume, port, enclosure) } : port;
  return succeed({
    alignment: aligned.value,
    ql,
    qlFrom: chamber.leak === null ? 'default' : 'chamber',
    netM3,
    sized: sized.value,
    port: placed,
    diameterFrom: present.length > 0 ? null : strokeM3 > 0 ? 'stroke' : 'start',
    command: {
      type: 'together',
      commands: [
        { type: 'set-chamber', id: chamber.id, changes: { volume } },
        present.length === 0
          ? { type: 'add-port', port: placed }
          : { type: 'set-port', id: port.id, changes: { lengthM: port.lengthM } },
      ],
    },
  });
}

const driversIn = ({ enclosure, network, drivers }: Project, chamber: Chamber): Driver[] =>
  enclosure.mounts.flatMap(({ partId, chamberId }) => {
    if (chamberId !== chamber.id) return [];
    const part = network.parts.find((candidate) => candidate.id === partId);
    return part?.kind === 'speaker' ? drivers.filter((candidate) => candidate.id === part.driverId) : [];
  });

/** A round tube on the back, where no driver is in its way; behind the drivers of the chamber until its height is known. */
function portToStart(project: Project, chamber: Chamber, tuningHz: number, strokeM3: number): Port {
  const port = newPort(project, chamber.id);
  const heights = project.enclosure.mounts.filter((mount) => mount.chamberId === chamber.id).map(({ yM }) => yM);
  const placed: Port = { ...port, face: 'back', xM: 0, yM: heights.reduce((a, b) => a + b, 0) / heights.length };
  if (!(strokeM3 > 0)) return placed;
  const diameterM = Math.ceil(leastPortDiameterM(tuningHz, strokeM3) / TUBE_STEP_M - 1e-9) * TUBE_STEP_M;
  return { ...placed, shape: { kind: 'round', diameterM: Number(diameterM.toFixed(3)) } };
}

const endsBeforeBack = ({ volume }: Chamber, { depthM, panelM }: Enclosure): boolean =>
  volume.kind === 'geometry' && volume.depthM !== null && volume.depthM < depthM - 2 * panelM;

const middleM = (volume: Chamber['volume'], port: Port, { panelM, heightM }: Enclosure): number =>
  volume.kind === 'stated'
    ? port.yM
    : Math.round(500 * (Math.max(volume.bottomM, panelM) + Math.min(volume.topM, heightM - panelM))) / 1000;

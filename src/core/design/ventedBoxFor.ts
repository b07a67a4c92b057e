import { airProperties } from '../acoustics/airProperties.ts';
import { leastPortDiameterM } from '../acoustics/port/leastPortSize.ts';
import { portLengthForTuning } from '../acoustics/port/portTuning.ts';
import type { Command } from '../document/command.ts';
import type { Chamber, Driver, Enclosure, Port, Project } from '../document/schema.ts';
import { newPort } from '../document/start/newPort.ts';
import { fail, type Problem, problem, type Result, succeed } from '../messages/problem.ts';
import { derivedOf } from '../speaker/derivedOf.ts';
import { boxWishProblems } from './boxWishProblems.ts';
import type { SizedChamber } from './chamberOfSize.ts';
import { driversIn } from './driversIn.ts';
import { portRoom } from './portRoom.ts';
import { sizeForApparent } from './sizeForApparent.ts';

/** A vented box of a wished size and tuning, fitted to a chamber as it stands in the document, and the command that makes it so. */
export interface VentedBox {
  /** Net volume that, with the gain of the filling, acts as the wished one, m³. */
  readonly netM3: number;
  readonly sized: SizedChamber;
  readonly port: Port;
  /** Where a new port's diameter comes from: the driver's stroke, or a start where the driver states none; null: its own port. */
  readonly diameterFrom: 'stroke' | 'start' | null;
  readonly command: Command;
  /** What stands against it though it can be computed: a port that is too long for the box, or for any pipe. */
  readonly doubts: readonly Problem[];
}

/** New tubes come in whole 5 mm, rounded up (common practice, no source). */
const TUBE_STEP_M = 0.005;
/** A port's length lands on 0.1 mm: well within 0.1 % of the tuning for anything that is a port. */
const LENGTH_STEPS_PER_M = 1e4;

/**
 * A chamber made a vented box of this apparent volume and tuning: its size, and the length of its port or a new one.
 *
 * A chamber without a port gets a round one on its back, as wide as `leastPortDiameterM` asks for the drivers in it; one with a kind of port
 * keeps its section. The length follows from the apparent volume, which the wish fixes, and the gross volume then takes the port of that
 * length in: no rounds are needed. Volume and tuning come out within 0.1 %. Problems: those of `portLengthForTuning`, `design.several-ports`,
 * `design.no-back`, `design.tube-too-wide`, `design.no-room`.
 * @example ventedBoxFor(project, chamber, { volumeM3: 0.03, tuningHz: 38 })
 */
export function ventedBoxFor(
  project: Project,
  chamber: Chamber,
  wish: { readonly volumeM3: number; readonly tuningHz: number },
): Result<VentedBox> {
  const { enclosure } = project;
  const { volumeM3, tuningHz } = wish;
  const air = airProperties(project.air);
  if (!air.ok) return air;
  const present = enclosure.ports.filter((port) => port.chamberId === chamber.id);
  const place = { kind: 'chamber', id: chamber.id } as const;
  if (present.length > 1) return fail(problem('design.several-ports', place, { name: chamber.name }));
  if (present.length === 0 && endsBeforeBack(chamber, enclosure)) {
    return fail(problem('design.no-back', place, { name: chamber.name }));
  }
  const strokeM3 = driversIn(project, chamber).reduce((sum, driver) => sum + sweptM3(driver), 0);
  const bare = present[0] ?? portToStart(project, chamber, tuningHz, strokeM3);
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
  const size = sizeForApparent(
    { ...project, enclosure: { ...enclosure, ports: [...others, port] } },
    chamber,
    volumeM3,
  );
  if (!size.ok) return size;
  const { volume } = size.value.sized;
  const placed = present.length === 0 ? { ...port, yM: middleM(volume, port, enclosure) } : port;
  const insideM = portRoom(placed, enclosure)?.longestM ?? null;
  return succeed({
    ...size.value,
    port: placed,
    diameterFrom: present.length > 0 ? null : strokeM3 > 0 ? 'stroke' : 'start',
    doubts: boxWishProblems({ kind: 'vented', volumeM3, tuningHz, port: placed, insideM }, air.value.soundSpeedMPerS),
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

/** Peak volume that a cone moves at full stroke, m³; 0 where nothing says it. */
const sweptM3 = (driver: Driver): number => {
  const read = derivedOf(driver);
  return read.ok ? read.value.parameters.sdM2 * (driver.entered.xmaxM ?? 0) : 0;
};

/** A round tube on the back, where no driver is in its way; behind the drivers of the chamber until its height is known. */
function portToStart(project: Project, chamber: Chamber, tuningHz: number, strokeM3: number): Port {
  const port = newPort(project, chamber.id);
  const heights = project.enclosure.mounts.filter((mount) => mount.chamberId === chamber.id).map(({ yM }) => yM);
  const yM = heights.length === 0 ? port.yM : heights.reduce((a, b) => a + b, 0) / heights.length;
  const placed: Port = { ...port, face: 'back', xM: 0, yM };
  if (!(strokeM3 > 0 && tuningHz > 0)) return placed;
  const diameterM = Math.ceil(leastPortDiameterM(tuningHz, strokeM3) / TUBE_STEP_M - 1e-9) * TUBE_STEP_M;
  return { ...placed, shape: { kind: 'round', diameterM: Number(diameterM.toFixed(3)) } };
}

const endsBeforeBack = ({ volume }: Chamber, { depthM, panelM }: Enclosure): boolean =>
  volume.kind === 'geometry' && volume.depthM !== null && volume.depthM < depthM - 2 * panelM;

const middleM = (volume: Chamber['volume'], port: Port, { panelM, heightM }: Enclosure): number =>
  volume.kind === 'stated'
    ? port.yM
    : Math.round(500 * (Math.max(volume.bottomM, panelM) + Math.min(volume.topM, heightM - panelM))) / 1000;

import type { Command } from '../document/command.ts';
import type { Chamber, Project } from '../document/schema.ts';
import { fail, problem, type Result, succeed } from '../messages/problem.ts';
import { chamberVolume, grossVolumeM3 } from '../speaker/chamberVolume.ts';
import { sizeForApparent } from './sizeForApparent.ts';
import { ventedBoxFor } from './ventedBoxFor.ts';

/** A wished box: apparent volume, m³, and tuning; null: sealed. */
export interface WishedBox {
  readonly volumeM3: number;
  readonly tuningHz: number | null;
}

export interface DeeperCabinet {
  readonly depthM: number;
  readonly command: Command;
}

const STEPS_PER_M = 1e5;
const ROUNDS = 12;

/**
 * The outer depth that gives a chamber bounded by heights a wished size without moving those, and the command that sets it with the port.
 *
 * Other chambers that reach the back grow too. Volume within 0.1 %. Problems: those of `ventedBoxFor` but for the room, and
 * `design.depth-fixed` where the chamber's own depth or a stated volume does not follow the cabinet.
 * @example deeperCabinetFor(project, chamber, { volumeM3: 0.014, tuningHz: 52 })
 */
export function deeperCabinetFor(project: Project, chamber: Chamber, wish: WishedBox): Result<DeeperCabinet> {
  const { enclosure } = project;
  const { volume } = chamber;
  if (volume.kind === 'stated' || volume.depthM !== null) {
    return fail(problem('design.depth-fixed', { kind: 'chamber', id: chamber.id }, { name: chamber.name }));
  }
  const free: Chamber = { ...chamber, volume: { kind: 'stated', grossM3: grossVolumeM3(chamber, enclosure) } };
  const wanted = wantedBox(project, free, wish);
  if (!wanted.ok) return wanted;
  const { grossM3, commands } = wanted.value;
  let depthM = enclosure.depthM;
  for (let k = 0; k < ROUNDS; k++) {
    const here = grossVolumeM3(chamber, { ...enclosure, depthM });
    const step = 1e-4;
    const slope = (grossVolumeM3(chamber, { ...enclosure, depthM: depthM + step }) - here) / step;
    if (!(slope > 0))
      return fail(problem('design.depth-fixed', { kind: 'chamber', id: chamber.id }, { name: chamber.name }));
    depthM += (grossM3 - here) / slope;
  }
  const rounded = Math.round(depthM * STEPS_PER_M) / STEPS_PER_M;
  if (!(rounded > 2 * enclosure.panelM)) {
    return fail(problem('design.no-air-left', { kind: 'chamber', id: chamber.id }, { volumeM3: grossM3 }));
  }
  const deepened: Command = { type: 'set-enclosure', changes: { depthM: rounded } };
  return succeed({ depthM: rounded, command: { type: 'together', commands: [deepened, ...commands] } });
}

/** Gross volume of the wished box if the chamber were free to be that large, and what else changes. */
function wantedBox(
  project: Project,
  free: Chamber,
  { volumeM3, tuningHz }: WishedBox,
): Result<{ readonly grossM3: number; readonly commands: readonly Command[] }> {
  if (tuningHz === null) {
    const { ports } = project.enclosure;
    const goes = ports.filter(({ chamberId, toChamberId }) => chamberId === free.id || toChamberId === free.id);
    const rest = { ...project.enclosure, ports: ports.filter((port) => !goes.includes(port)) };
    const sealed = sizeForApparent({ ...project, enclosure: rest }, free, volumeM3);
    if (!sealed.ok) return sealed;
    const taken = chamberVolume({ ...project, enclosure: rest }, free);
    const commands = goes.map(({ id }): Command => ({ type: 'remove-port', id }));
    return succeed({ grossM3: sealed.value.netM3 + taken.grossM3 - taken.netM3, commands });
  }
  const box = ventedBoxFor(project, free, { volumeM3, tuningHz });
  if (!box.ok) return box;
  const { sized, port, command } = box.value;
  if (sized.volume.kind !== 'stated' || command.type !== 'together')
    throw new RangeError('a stated chamber stays stated');
  const own = project.enclosure.ports.some(({ id }) => id === port.id);
  const place = own ? port : { ...port, yM: middleM(project, free.id) ?? port.yM };
  const ports: Command = own
    ? { type: 'set-port', id: port.id, changes: { lengthM: port.lengthM } }
    : { type: 'add-port', port: place };
  return succeed({ grossM3: sized.volume.grossM3, commands: [ports] });
}

/** Half-way up the chamber as it stands, m. */
const middleM = ({ enclosure }: Project, id: string): number | null => {
  const volume = enclosure.chambers.find((chamber) => chamber.id === id)?.volume;
  return volume?.kind === 'geometry' ? Math.round(500 * (volume.bottomM + volume.topM)) / 1000 : null;
};

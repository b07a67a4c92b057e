import { splitPort } from '../acoustics/port/splitPort.ts';
import type { Command } from '../document/command.ts';
import type { Port, Project } from '../document/schema.ts';
import { apparentVolumeM3 } from '../speaker/apparentVolume.ts';
import { lengthForTuning } from './lengthForTuning.ts';
import { tuningCutShorter } from './tuningCutShorter.ts';

const MOST_PORTS = 8;
/** Bores land on 0.1 mm, lengths too. */
const STEPS_PER_M = 1e4;
const rounded = (m: number): number => Math.max(1, Math.round(m * STEPS_PER_M)) / STEPS_PER_M;

/**
 * The command that makes twice as many ports of the same total section, each as long as the present tuning then asks: smaller mouths
 * carry less air with them, so the bores become longer. null where they would be more than eight. Source: `splitPort`.
 * @example splitOverTwo(project, port, 343.2)
 */
export function splitOverTwo(project: Project, port: Port, soundSpeedMPerS: number): Command | null {
  const { enclosure } = project;
  const chamber = enclosure.chambers.find(({ id }) => id === port.chamberId);
  if (2 * port.count > MOST_PORTS || !chamber || !(apparentVolumeM3(project, chamber) > 0)) return null;
  const { shape, lengthM } = splitPort(port, 2);
  const split: Port = {
    ...port,
    shape:
      shape.kind === 'round'
        ? { kind: 'round', diameterM: rounded(shape.diameterM) }
        : { kind: 'slot', widthM: rounded(shape.widthM), heightM: rounded(shape.heightM) },
    count: 2 * port.count,
    lengthM: rounded(lengthM),
  };
  const tuningHz = tuningCutShorter(project, port, 0, soundSpeedMPerS);
  const ports = enclosure.ports.map((each) => (each.id === port.id ? split : each));
  const length =
    tuningHz === null
      ? null
      : lengthForTuning({ ...project, enclosure: { ...enclosure, ports } }, split, tuningHz, soundSpeedMPerS);
  const changes = {
    shape: split.shape,
    count: split.count,
    lengthM: length?.ok ? rounded(length.value) : split.lengthM,
  };
  return { type: 'set-port', id: port.id, changes };
}

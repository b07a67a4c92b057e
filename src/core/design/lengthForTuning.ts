import { portLengthForTuning } from '../acoustics/port/portTuning.ts';
import type { Port, Project } from '../document/schema.ts';
import { fail, type Result, succeed } from '../messages/problem.ts';
import { apparentVolumeM3 } from '../speaker/apparentVolume.ts';

const ROUNDS = 30;
const CLOSE_M = 1e-6;

/**
 * The length that this kind of port needs for a tuning, m, with the space that the port itself takes at that length: asked
 * again with each new volume until it no longer changes. null where the chamber has other kinds of port too, or none.
 */
export function lengthForTuning(
  project: Project,
  port: Port,
  tuningHz: number,
  soundSpeedMPerS: number,
): Result<number> | null {
  const chamber = project.enclosure.chambers.find((candidate) => candidate.id === port.chamberId);
  const kinds = project.enclosure.ports.filter((candidate) => candidate.chamberId === port.chamberId);
  if (!chamber || kinds.length !== 1) return null;
  let lengthM = port.lengthM;
  for (let k = 0; k < ROUNDS; k++) {
    const { enclosure } = project;
    const ports = enclosure.ports.map((candidate) => (candidate.id === port.id ? { ...port, lengthM } : candidate));
    const apparentM3 = apparentVolumeM3({ ...project, enclosure: { ...enclosure, ports } }, chamber);
    if (!(apparentM3 > 0)) return fail();
    const found = portLengthForTuning(port, tuningHz, apparentM3, soundSpeedMPerS);
    if (!found.ok) return found;
    if (Math.abs(found.value - lengthM) < CLOSE_M) return found;
    lengthM = found.value;
  }
  return succeed(lengthM);
}

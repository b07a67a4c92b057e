import { portFlaresM } from '../acoustics/port/portEffectiveLength.ts';
import { tuningForPortLength } from '../acoustics/port/portTuning.ts';
import type { Port, Project } from '../document/schema.ts';
import { apparentVolumeM3 } from '../speaker/apparentVolume.ts';

/**
 * Tuning of a port's chamber when each port of this kind is cut shorter by `cutM`, Hz, with the air that the shorter ports leave.
 *
 * null where it is too short for that, where something else opens the chamber too, or where it leads to another chamber. Source: as `tuningOfShorterPort`.
 * @example tuningCutShorter(project, port, 0.005, 343.2)
 */
export function tuningCutShorter(project: Project, port: Port, cutM: number, soundSpeedMPerS: number): number | null {
  const { enclosure } = project;
  const chamber = enclosure.chambers.find(({ id }) => id === port.chamberId);
  const lengthM = port.lengthM - cutM;
  const others = [
    ...enclosure.ports.filter(({ id }) => id !== port.id),
    ...enclosure.passiveRadiators,
    ...enclosure.lines,
  ].some(({ chamberId }) => chamberId === port.chamberId);
  if (!chamber || others || port.toChamberId !== null || !(lengthM > 0) || lengthM < portFlaresM(port)) return null;
  const shorter = { ...port, lengthM };
  const ports = enclosure.ports.map((each) => (each.id === port.id ? shorter : each));
  const volumeM3 = apparentVolumeM3({ ...project, enclosure: { ...enclosure, ports } }, chamber);
  return volumeM3 > 0 ? tuningForPortLength(shorter, volumeM3, soundSpeedMPerS) : null;
}

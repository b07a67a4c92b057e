import { chamberComplianceM3PerPa } from '../../acoustics/chamber.ts';
import { portSectionM2 } from '../../acoustics/port/portShape.ts';
import type { Command } from '../../document/command.ts';
import type { Port, Project } from '../../document/schema.ts';
import { newPort } from '../../document/start/newPort.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { apparentVolumeM3 } from '../../speaker/apparentVolume.ts';
import { emptied } from './emptied.ts';
import { wayOf } from './wayOf.ts';

/** A short wide hole behind which felt or wool is clamped (common practice, no source). */
const DIAMETER_M = 0.06;
const PAD_M = 0.02;

/**
 * The command that gives a driver's chamber an aperiodic vent in the place of whatever opens it: a short hole stuffed so that it damps the
 * chamber's resonance most, ωRC = 1 at fs √(1 + Vas/V), R = σ t/S. `design.needs-chamber` without one. Source: as `ventDampingPaSPerM3`.
 * @example aperiodicStart(project, 'LS1')
 */
export function aperiodicStart(project: Project, partId: string): Result<Command> {
  const way = wayOf(project, partId);
  if (!way.ok) return way;
  const { mount, figures, air } = way.value;
  const chamber = project.enclosure.chambers.find(({ id }) => id === mount.chamberId);
  if (chamber === undefined) {
    return fail(problem('design.needs-chamber', { kind: 'mount', id: partId }, { name: partId }));
  }
  const volumeM3 = apparentVolumeM3(project, chamber);
  if (!(volumeM3 > 0)) return fail(problem('design.no-air-left', { kind: 'chamber', id: chamber.id }, { volumeM3 }));
  const omega = 2 * Math.PI * figures.fsHz * Math.sqrt(1 + figures.vasM3 / volumeM3);
  const shape = { kind: 'round', diameterM: DIAMETER_M } as const;
  const lengthM = Number((project.enclosure.panelM + PAD_M).toFixed(4));
  const wishedPaSPerM3 = 1 / (omega * chamberComplianceM3PerPa(volumeM3, air));
  const port: Port = {
    ...newPort(project, chamber.id),
    shape,
    lengthM,
    face: 'back',
    xM: 0,
    yM: mount.yM,
    stuffingPaSPerM2: Number(((wishedPaSPerM3 * portSectionM2(shape)) / lengthM).toPrecision(2)),
    resonances: false,
  };
  return succeed({ type: 'together', commands: [...emptied(project, chamber.id), { type: 'add-port', port }] });
}

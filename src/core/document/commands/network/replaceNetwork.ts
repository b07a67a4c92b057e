import type { Part } from '../../../circuit/part.ts';
import { fail, type Problem, problem, type Result, succeed } from '../../../messages/problem.ts';
import type { Driver, Project } from '../../schema.ts';
import { mountFor } from '../../start/mountFor.ts';
import { settingsFor } from '../../start/settingsFor.ts';
import type { Applier } from '../applier.ts';
import { alike, withChanges } from '../withChanges.ts';
import { keptAmplifiers } from './keptAmplifiers.ts';

const plain = (name: string) => name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');

/** By id, else by id or name with letters and digits alone, since circuit text knows neither spaces nor capitals. */
const driverNamed = (drivers: readonly Driver[], name: string): Driver | undefined =>
  drivers.find((driver) => driver.id === name) ??
  drivers.find((driver) => plain(driver.id) === plain(name)) ??
  drivers.find((driver) => plain(driver.name) === plain(name));

/** A speaker line without a driver's name keeps the driver of the speaker that has this name now. */
function matchDrivers(project: Project, parts: readonly Part[]): Result<Part[]> {
  const { drivers, network } = project;
  const problems: Problem[] = [];
  const matched = parts.map((part): Part => {
    if (part.kind !== 'speaker') return part;
    const present = network.parts.find((old) => old.kind === 'speaker' && old.id === part.id);
    const kept = part.driverId === '' && present?.kind === 'speaker' ? present.driverId : part.driverId;
    const driver = driverNamed(drivers, kept);
    if (driver) return { ...part, driverId: driver.id };
    const known = drivers.map(({ id, name }) => `${id} (${name})`).join(', ');
    const place = { kind: 'driver', id: part.driverId } as const;
    problems.push(problem('document.unknown-driver', place, { partId: part.id, known }));
    return part;
  });
  return problems.length > 0 ? fail(...problems) : succeed(matched);
}

/**
 * Another circuit for the same drivers and cabinet. Parts that did not change stay identical; speakers that stay keep
 * their places, new ones get one, those that went lose it; amplifiers likewise with their settings. Circuit text without an amplifier
 * is driven by the present ones (`keptAmplifiers`).
 */
export const replaceNetwork: Applier<'replace-network'> = (project, { parts }) => {
  const matched = matchDrivers(project, [...keptAmplifiers(project.network.parts, parts), ...parts]);
  if (!matched.ok) return matched;
  const old = new Map(project.network.parts.map((part) => [part.id, part]));
  const next = matched.value.map((part) => (alike(old.get(part.id), part) ? old.get(part.id)! : part));

  const amplifierIds = next.filter((part) => part.kind === 'amplifier').map((part) => part.id);
  const { chain } = project;
  const amplifiers = amplifierIds.map(
    (id) => chain.amplifiers.find((amplifier) => amplifier.id === id) ?? settingsFor(chain, id),
  );
  const same = alike(next, project.network.parts);
  let placed: Project = withChanges(same ? project : { ...project, network: { ...project.network, parts: next } }, {
    chain: withChanges(chain, { amplifiers }),
  });

  const speakers = next.filter((part) => part.kind === 'speaker');
  const staying = placed.enclosure.mounts.filter((mount) => speakers.some((speaker) => speaker.id === mount.partId));
  placed = withChanges(placed, { enclosure: withChanges(placed.enclosure, { mounts: staying }) });
  for (const { id, driverId } of speakers) {
    const { enclosure } = placed;
    if (enclosure.mounts.some((mount) => mount.partId === id)) continue;
    placed = { ...placed, enclosure: { ...enclosure, mounts: [...enclosure.mounts, mountFor(placed, id, driverId)] } };
  }
  return succeed(placed);
};

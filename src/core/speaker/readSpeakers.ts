import type { Position } from '../acoustics/index.ts';
import type { Driver, Project } from '../document/schema.ts';
import { type Finding, type Problem, problem } from '../messages/problem.ts';
import { derivedOf } from './derivedOf.ts';
import { measuredOf } from './measuredOf.ts';
import type { AirProperties, DriverParameters, ModelSpeaker } from './model.ts';
import { type PathMemory, rememberedPath } from './radiationPath.ts';

/**
 * Every speaker part of the network with its driver's complete parameters, its chamber and its path. What cannot be read is
 * left out and said in `problems`; what a data sheet contradicts goes into `findings`.
 */
export function readSpeakers(
  project: Project,
  air: AirProperties,
  listener: Position,
  paths: PathMemory,
  problems: Problem[],
  findings: Finding[],
): ModelSpeaker[] {
  const { network, drivers, enclosure } = project;
  const parameters = new Map<string, DriverParameters | null>();
  const parametersOf = (driver: Driver): DriverParameters | null => {
    const known = parameters.get(driver.id);
    if (known !== undefined) return known;
    const derived = derivedOf(driver);
    if (derived.ok) {
      for (const finding of derived.value.findings)
        findings.push({ ...finding, place: { kind: 'driver', id: driver.id, ...fieldOf(finding) } });
    } else {
      for (const p of derived.problems) problems.push({ ...p, place: { ...p.place, kind: 'driver', id: driver.id } });
    }
    const value = derived.ok ? derived.value.parameters : null;
    parameters.set(driver.id, value);
    return value;
  };
  const tables = new Map<string, ModelSpeaker['measured']>();
  const tablesOf = (driver: Driver): ModelSpeaker['measured'] => {
    const known = tables.get(driver.id);
    if (known !== undefined) return known;
    const measured = measuredOf(driver, project.curves, air, findings);
    tables.set(driver.id, measured);
    return measured;
  };
  const speakers: ModelSpeaker[] = [];
  for (const part of network.parts) {
    if (part.kind !== 'speaker') continue;
    const place = { kind: 'part', id: part.id } as const;
    const driver = drivers.find((d) => d.id === part.driverId);
    const mount = enclosure.mounts.find((m) => m.partId === part.id);
    if (driver === undefined) problems.push(problem('speaker.unknown-driver', place, { driverId: part.driverId }));
    if (mount === undefined) problems.push(problem('speaker.no-mount', place));
    if (driver === undefined || mount === undefined) continue;
    const unknown = [mount.chamberId, mount.frontChamberId].find(
      (id) => id !== null && !enclosure.chambers.some((c) => c.id === id),
    );
    if (unknown) {
      problems.push(problem('speaker.unknown-chamber', place, { chamberId: unknown }));
      continue;
    }
    const own = parametersOf(driver);
    if (own === null) continue;
    const at = { xM: mount.xM, yM: mount.yM, zM: mount.acousticCentreZM };
    speakers.push({
      partId: part.id,
      parameters: own,
      chamberId: mount.chamberId,
      frontChamberId: mount.frontChamberId,
      radiation: rememberedPath(
        paths,
        part.id,
        project,
        at,
        mount.back === 'open' ? 'both' : 'front',
        Math.sqrt(own.sdM2 / Math.PI),
        listener,
      ),
      measured: tablesOf(driver),
    });
  }
  if (speakers.length === 0 && problems.length === 0)
    problems.push(problem('speaker.no-speaker', { kind: 'document' }));
  return speakers;
}

const fieldOf = (finding: Finding): { field?: string } =>
  finding.place.field === undefined ? {} : { field: finding.place.field };

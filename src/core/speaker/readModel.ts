import { airProperties } from '../acoustics/index.ts';
import { viscousAir } from '../acoustics/viscousAir.ts';
import type { Project } from '../document/schema.ts';
import { type Finding, type Problem, problem, type Result, succeed } from '../messages/problem.ts';
import { type ChamberVolume, chamberVolume } from './chamberVolume.ts';
import { listeningPoint } from './listeningPoint.ts';
import type { SpeakerModel } from './model.ts';
import type { PathMemory } from './radiationPath.ts';
import { readAmplifier } from './readAmplifier.ts';
import { readChambers } from './readChambers.ts';
import { fillingProblems, openingProblems } from './readLimits.ts';
import { readOutlets } from './readOutlets.ts';
import { readSpeakers } from './readSpeakers.ts';

export interface ReadModel {
  readonly model: SpeakerModel;
  readonly volumes: ReadonlyMap<string, ChamberVolume>;
  /** What the data sheets contradict. */
  readonly findings: readonly Finding[];
}

const LEAST_DISTANCE_M = 0.1;

/**
 * What a document says, as the physical model that is solved: air, complete driver parameters, chamber volumes, port
 * lengths, and the path from every cone and port to the listening point.
 *
 * Every Problem found is returned, not only the first. `paths` lends the paths of an earlier run and takes the present ones.
 * @example const read = readModel(project); if (read.ok) simulate(read.value.model, frequenciesHz);
 */
export function readModel(project: Project, paths: PathMemory = new Map()): Result<ReadModel> {
  const problems: Problem[] = [];
  const findings: Finding[] = [];
  const { enclosure, chain, network } = project;
  const air = airProperties(project.air);
  if (!air.ok) return air;
  if (2 * enclosure.panelM >= Math.min(enclosure.widthM, enclosure.heightM, enclosure.depthM)) {
    const { panelM, widthM, heightM, depthM } = enclosure;
    problems.push(
      problem('speaker.no-inside', { kind: 'field', field: 'panelM' }, { panelM, widthM, heightM, depthM }),
    );
  }
  const volumes = new Map<string, ChamberVolume>();
  for (const chamber of enclosure.chambers) {
    const volume = chamberVolume(project, chamber);
    volumes.set(chamber.id, volume);
    if (volume.netM3 > 0) continue;
    problems.push(
      problem(
        'speaker.no-volume-left',
        { kind: 'chamber', id: chamber.id },
        { grossM3: volume.grossM3, takenM3: volume.grossM3 - volume.netM3 },
      ),
    );
  }
  const amplifiers = network.parts.flatMap((part) => {
    if (part.kind !== 'amplifier') return [];
    const settings = chain.amplifiers.find((a) => a.id === part.id);
    if (settings === undefined) {
      problems.push(problem('speaker.unknown-amplifier', { kind: 'part', id: part.id }));
      return [];
    }
    return [readAmplifier(settings, chain.driveV, problems)];
  });
  if (amplifiers.length === 0) problems.push(problem('speaker.no-amplifier', { kind: 'document' }));
  const listener = listeningPoint(project.listening);
  const { xM, yM, zM } = listener;
  if (
    Math.abs(xM) <= enclosure.widthM / 2 &&
    yM >= 0 &&
    yM <= enclosure.heightM &&
    zM <= 0 &&
    zM >= -enclosure.depthM
  ) {
    problems.push(problem('speaker.listener-inside', { kind: 'field', field: 'distanceM' }));
  }
  const speakers = readSpeakers(project, air.value, listener, paths, problems, findings);
  const viscous = viscousAir(air.value, project.air.temperatureC);
  const { ports, passiveRadiators, lines } = readOutlets(project, viscous, listener, paths);
  for (const source of [
    ...speakers.map((s) => ({ id: s.partId, ...s.radiation })),
    ...[...ports, ...passiveRadiators].map((p) => ({ id: p.id, ...p.radiation })),
    ...lines.flatMap((line) => (line.end.kind === 'open' ? [{ id: line.id, ...line.end.radiation }] : [])),
  ]) {
    if (source.distanceM >= LEAST_DISTANCE_M) continue;
    problems.push(
      problem(
        'speaker.listener-too-near',
        { kind: 'field', field: 'distanceM' },
        { distanceM: source.distanceM, partId: source.id },
      ),
    );
  }
  problems.push(...openingProblems(project, ports), ...fillingProblems(enclosure));
  for (const { id, chamberId } of enclosure.ports) {
    if (volumes.has(chamberId)) continue;
    problems.push(problem('speaker.unknown-chamber', { kind: 'port', id }, { chamberId }));
  }
  if (problems.length > 0) return { ok: false, problems };
  const model: SpeakerModel = {
    air: air.value,
    airTemperatureC: project.air.temperatureC,
    amplifiers,
    parts: network.parts,
    speakers,
    chambers: readChambers(project, volumes, viscous),
    ports,
    passiveRadiators,
    lines,
    radiation: project.listening.radiation,
  };
  return succeed({ model, volumes, findings });
}

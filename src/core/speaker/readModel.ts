import { airProperties, portEffectiveLengthM, portSectionM2 } from '../acoustics/index.ts';
import type { Project } from '../document/schema.ts';
import { type Finding, type Problem, problem, type Result, succeed } from '../messages/problem.ts';
import { type ChamberVolume, chamberVolume } from './chamberVolume.ts';
import { listeningPoint } from './listeningPoint.ts';
import type { SpeakerModel } from './model.ts';
import { type PathMemory, rememberedPath } from './radiationPath.ts';
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
    return [{ id: part.id, voltageV: chain.driveV, resistanceOhm: settings.outputResistanceOhm + settings.cableOhm }];
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
  const ports = enclosure.ports.map((port) => ({
    id: port.id,
    chamberId: port.chamberId,
    areaM2: port.count * portSectionM2(port.shape),
    effectiveLengthM: portEffectiveLengthM(port),
    loss: port.loss,
    radiation: rememberedPath(
      paths,
      `port ${port.id}`,
      project,
      { xM: port.xM, yM: port.yM, zM: port.face === 'front' ? 0 : -enclosure.depthM },
      port.face,
      Math.sqrt((port.count * portSectionM2(port.shape)) / Math.PI),
      listener,
    ),
  }));
  for (const source of [
    ...speakers.map((s) => ({ id: s.partId, ...s.radiation })),
    ...ports.map((p) => ({ id: p.id, ...p.radiation })),
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
  for (const { id, chamberId } of enclosure.ports) {
    if (volumes.has(chamberId)) continue;
    problems.push(problem('speaker.unknown-chamber', { kind: 'port', id }, { chamberId }));
  }
  if (problems.length > 0) return { ok: false, problems };
  const chambers = enclosure.chambers.map((chamber) => ({
    id: chamber.id,
    volumeM3: volumes.get(chamber.id)!.apparentM3,
    leak: chamber.leak,
    absorption: chamber.absorption,
  }));
  const model: SpeakerModel = {
    air: air.value,
    amplifiers,
    parts: network.parts,
    speakers,
    chambers,
    ports,
    passiveRadiators: [],
    radiation: project.listening.radiation,
  };
  return succeed({ model, volumes, findings });
}

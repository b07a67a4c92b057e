import type { Project } from '../document/schema.ts';
import type { ChamberVolume } from '../speaker/chamberVolume.ts';
import { levelsDbSpl, magnitudes } from '../speaker/complexCurve.ts';
import type { SpeakerModel } from '../speaker/model.ts';
import type { Simulation } from '../speaker/simulation.ts';
import { amplifierPeaks } from './amplifierPeaks.ts';
import { greatestInBand, leastInBand } from './band.ts';
import { chamberTuning } from './chamberTuning.ts';
import type { KeyFigures } from './evaluation.ts';
import { dropFrequencyHz, MEAN_FROM_HZ, MEAN_TO_HZ, meanLevelDb, RIPPLE_TO_HZ, rippleDb } from './levelFigures.ts';
import { coilHeatOf } from './limits/coilHeatOf.ts';
import { musicHeat } from './limits/musicHeat.ts';
import { mouthAir, portAir } from './portAir.ts';

/** The band in which limits are judged: what programme can hold. */
const AUDIBLE_FROM_HZ = 20;
const AUDIBLE_TO_HZ = 20000;

/**
 * The numbers of the strip below the plots, from a simulation at the listening point and the set drive.
 * `sensitivityDbSpl` comes from the caller, since it is heard at another point. Excursion and port speed are peaks.
 */
export function keyFigures(
  project: Project,
  model: SpeakerModel,
  simulation: Simulation,
  volumes: ReadonlyMap<string, ChamberVolume>,
  sensitivityDbSpl: number | null,
): KeyFigures {
  const { frequenciesHz } = simulation;
  const levels = levelsDbSpl(simulation.sum);
  const mean = meanLevelDb(levels, frequenciesHz);
  return {
    lowMinus3Hz: mean === null ? null : dropFrequencyHz(levels, frequenciesHz, MEAN_FROM_HZ, 'down', mean),
    highMinus3Hz: mean === null ? null : dropFrequencyHz(levels, frequenciesHz, MEAN_TO_HZ, 'up', mean),
    meanLevelDbSpl: mean,
    sensitivityDbSpl,
    rippleDb: rippleDb(levels, frequenciesHz, MEAN_FROM_HZ, RIPPLE_TO_HZ),
    leastImpedance: leastImpedance(simulation),
    excursions: simulation.speakers.map(({ partId, excursionPeakM }) => ({
      partId,
      ...travelOf(excursionPeakM, frequenciesHz),
      limitM: driverOf(project, partId)?.entered.xmaxM ?? null,
    })),
    radiatorExcursions: simulation.passiveRadiators.map(({ id, excursionPeakM }) => ({
      id,
      ...travelOf(excursionPeakM, frequenciesHz),
      limitM: project.enclosure.passiveRadiators.find((radiator) => radiator.id === id)?.xmaxM ?? null,
    })),
    portSpeeds: simulation.ports.map((result) => {
      const port = project.enclosure.ports.find(({ id }) => id === result.id);
      return portAir(port, result, frequenciesHz, model);
    }),
    lineSpeeds: simulation.lines.map((line) => mouthAir(frequenciesHz, line)),
    chambers: project.enclosure.chambers.map((chamber) => {
      const volume = volumes.get(chamber.id)!;
      return {
        id: chamber.id,
        grossM3: volume.grossM3,
        netM3: volume.netM3,
        apparentM3: model.chambers.find(({ id }) => id === chamber.id)?.volumeM3 ?? volume.apparentM3,
        ...chamberTuning(model, chamber.id),
      };
    }),
    coilPowers: simulation.speakers.map((speaker) => {
      const powers = simulation.partPowersW.get(speaker.partId)!;
      const greatest = greatestInBand(powers, frequenciesHz, AUDIBLE_FROM_HZ, AUDIBLE_TO_HZ);
      return {
        partId: speaker.partId,
        powerW: greatest?.value ?? 0,
        atHz: greatest?.atHz ?? AUDIBLE_FROM_HZ,
        ratedW: driverOf(project, speaker.partId)?.entered.ratedPowerW ?? null,
      };
    }),
    coilHeats: musicHeat(coilsOf(project, simulation), model, simulation, project.air.temperatureC),
    amplifierPeaks: amplifierPeaks(project.chain, model, simulation),
  };
}

const travelOf = (excursionPeakM: Float64Array, frequenciesHz: Float64Array) => {
  const greatest = greatestInBand(excursionPeakM, frequenciesHz, AUDIBLE_FROM_HZ, AUDIBLE_TO_HZ);
  return { peakM: greatest?.value ?? 0, atHz: greatest?.atHz ?? AUDIBLE_FROM_HZ };
};

const coilsOf = (project: Project, { speakers }: Simulation) =>
  new Map(
    speakers.flatMap(({ partId }) => {
      const driver = driverOf(project, partId);
      return driver === undefined ? [] : [[partId, coilHeatOf(driver)] as const];
    }),
  );

function leastImpedance(simulation: Simulation): KeyFigures['leastImpedance'] {
  let least: KeyFigures['leastImpedance'] = null;
  for (const amplifier of simulation.amplifiers) {
    const found = leastInBand(
      magnitudes(amplifier.impedance),
      simulation.frequenciesHz,
      AUDIBLE_FROM_HZ,
      AUDIBLE_TO_HZ,
    );
    if (found !== null && (least === null || found.value < least.ohm)) {
      least = { ohm: found.value, atHz: found.atHz, amplifierId: amplifier.id };
    }
  }
  return least;
}

/** The driver that a speaker part of the network carries. */
export function driverOf(
  project: Pick<Project, 'network' | 'drivers'>,
  partId: string,
): Project['drivers'][number] | undefined {
  const part = project.network.parts.find((p) => p.id === partId);
  return part?.kind === 'speaker' ? project.drivers.find((d) => d.id === part.driverId) : undefined;
}

import type { Project } from '../document/schema.ts';
import type { ChamberVolume } from '../speaker/chamberVolume.ts';
import { levelsDbSpl, magnitudes } from '../speaker/complexCurve.ts';
import type { SpeakerModel } from '../speaker/model.ts';
import type { Simulation } from '../speaker/simulation.ts';
import { greatestInBand, leastInBand } from './band.ts';
import { chamberTuning } from './chamberTuning.ts';
import type { KeyFigures } from './evaluation.ts';
import { dropFrequencyHz, MEAN_FROM_HZ, MEAN_TO_HZ, meanLevelDb, RIPPLE_TO_HZ, rippleDb } from './levelFigures.ts';

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
    excursions: simulation.speakers.map((speaker) => {
      const driver = driverOf(project, speaker.partId);
      const greatest = greatestInBand(speaker.excursionPeakM, frequenciesHz, AUDIBLE_FROM_HZ, AUDIBLE_TO_HZ);
      return {
        partId: speaker.partId,
        peakM: greatest?.value ?? 0,
        atHz: greatest?.atHz ?? AUDIBLE_FROM_HZ,
        limitM: driver?.entered.xmaxM ?? null,
      };
    }),
    portSpeeds: simulation.ports.map((port) => {
      const greatest = greatestInBand(port.airSpeedRmsMPerS, frequenciesHz, AUDIBLE_FROM_HZ, AUDIBLE_TO_HZ);
      return { id: port.id, peakMPerS: Math.SQRT2 * (greatest?.value ?? 0), atHz: greatest?.atHz ?? AUDIBLE_FROM_HZ };
    }),
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
  };
}

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
export function driverOf(project: Project, partId: string): Project['drivers'][number] | undefined {
  const part = project.network.parts.find((p) => p.id === partId);
  return part?.kind === 'speaker' ? project.drivers.find((d) => d.id === part.driverId) : undefined;
}

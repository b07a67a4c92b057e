import {
  COIL_METALS,
  type CoilHeat,
  equilibriumRiseK,
  heatResponseKPerW,
  hotCoilLossDb,
  hotResistanceRatio,
} from '../../acoustics/index.ts';
import type { Simulation } from '../../speaker/simulation.ts';
import { programmePowerW } from './programmePower.ts';
import type { ProgrammeBand } from './programmeSpectrum.ts';

/** Music as it heats: what it is made of, how peaky it is, and for how long it plays. */
export interface Programme {
  readonly bands: readonly ProgrammeBand[];
  /** Peak over rms, dB; its peaks reach those of the sine at the set drive. */
  readonly crestDb: number;
  /** How long it plays, s; Infinity: until the coils have settled. */
  readonly lastsS: number;
  /** Temperature from which coils start, °C. */
  readonly startC: number;
}

/** A coil at the end of a programme. */
export interface ProgrammeHeat {
  readonly partId: string;
  /** Long-term power into the cold coil, and into the hot one at the end, W. */
  readonly coldPowerW: number;
  readonly powerW: number;
  readonly riseK: number;
  readonly temperatureC: number;
  readonly limitC: number;
  /** Level lost where the coil's resistance is nearly all of the impedance, dB, positive. */
  readonly lossDb: number;
}

/** What a coil comes to, from its powers cold and hot and its rise. */
export function heatReport(
  partId: string,
  heat: CoilHeat,
  startC: number,
  coldPowerW: number,
  powerW: number,
  riseK: number,
): ProgrammeHeat {
  const { alphaPerK } = COIL_METALS[heat.metal];
  return {
    partId,
    coldPowerW,
    powerW,
    riseK,
    temperatureC: startC + riseK,
    limitC: heat.limitC,
    lossDb: hotCoilLossDb(riseK, alphaPerK),
  };
}

/**
 * How hot music makes each coil that has a heat path, from one simulation with cold coils: quick enough for every edit.
 *
 * Takes each coil for a resistance on a voltage source, so that its power falls as it warms. Behind a crossover, or mostly at
 * resonance, it falls less or even rises, and the estimate is too low. `settleHeat` solves the loudspeaker again for the exact answer.
 * @example programmeHeat(simulation, new Map([['LS1', usualCoilHeat('small')]]), programme)[0].temperatureC
 */
export function programmeHeat(
  simulation: Simulation,
  coils: ReadonlyMap<string, CoilHeat>,
  { bands, crestDb, lastsS, startC }: Programme,
): ProgrammeHeat[] {
  return simulation.speakers.flatMap(({ partId }) => {
    const heat = coils.get(partId);
    if (heat === undefined) return [];
    const { alphaPerK } = COIL_METALS[heat.metal];
    const coldPowerW = programmePowerW(simulation.partPowersW.get(partId)!, simulation.frequenciesHz, bands, crestDb);
    const riseK = equilibriumRiseK(coldPowerW, heatResponseKPerW(heat.path, lastsS), alphaPerK);
    const powerW = coldPowerW / hotResistanceRatio(riseK, alphaPerK);
    return [heatReport(partId, heat, startC, coldPowerW, powerW, riseK)];
  });
}

import type { CoilHeat } from '../../acoustics/index.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import type { Simulation } from '../../speaker/simulation.ts';
import { type ProgrammeHeat, programmeHeat } from './programmeHeat.ts';
import { USUAL_CREST_DB } from './programmePower.ts';
import { USUAL_PROGRAMME } from './programmeSpectrum.ts';
import { settleHeat } from './settleHeat.ts';

/** A coil after music at the set drive; whether its heat path is stated or as is usual for its size. */
export type MusicHeat = ProgrammeHeat & { readonly isStated: boolean };

/** Share of the allowed rise from which the quick estimate, which may be low behind a crossover, is not trusted. */
const NEAR_SHARE = 0.5;
/** What an edit can wait for: from the estimate two to four rounds lead within a tenth of a kelvin. */
const MOST_ROUNDS = 8;
const SETTLED_K = 0.1;

/**
 * How hot usual music (12 dB crest, its peaks those of the sine at the set drive) makes each coil in the long run, at every edit.
 *
 * One quick estimate from the simulation with cold coils; once a coil whose heat is stated passes half of its allowed rise, the
 * loudspeaker is solved again as they warm, to 0.1 K or for 8 rounds at most. Rounds that run out leave the hotter of both answers. Coils as usual are known to a factor 2 only and stay with the estimate.
 * @example musicHeat(new Map([['LS1', coilHeatOf(driver)]]), model, simulation, 20)[0].temperatureC
 */
export function musicHeat(
  coils: ReadonlyMap<string, CoilHeat & { readonly isStated: boolean }>,
  model: SpeakerModel,
  simulation: Simulation,
  startC: number,
): MusicHeat[] {
  const programme = { bands: USUAL_PROGRAMME, crestDb: USUAL_CREST_DB, lastsS: Number.POSITIVE_INFINITY, startC };
  const isStated = (partId: string): boolean => coils.get(partId)?.isStated === true;
  const quick = programmeHeat(simulation, coils, programme);
  const isNear = quick.some(({ partId, riseK, limitC }) => isStated(partId) && riseK > NEAR_SHARE * (limitC - startC));
  const fromK = new Map(quick.map(({ partId, riseK }) => [partId, riseK]));
  const settling = { mostRounds: MOST_ROUNDS, settledK: SETTLED_K, fromK };
  const settled = isNear ? settleHeat(model, coils, programme, settling) : null;
  return quick.map((estimate) => {
    const exact = settled?.ok ? settled.value.heats.find(({ partId }) => partId === estimate.partId) : undefined;
    const trusted =
      exact !== undefined && settled?.ok && (settled.value.converged || exact.riseK > estimate.riseK)
        ? exact
        : estimate;
    return { ...trusted, isStated: isStated(estimate.partId) };
  });
}

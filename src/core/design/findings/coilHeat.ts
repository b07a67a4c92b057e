import type { Finding } from '../../messages/problem.ts';
import { driverOf } from '../keyFigures.ts';
import { coilHeatOf } from '../limits/coilHeatOf.ts';
import { type ProgrammeHeat, programmeHeat } from '../limits/programmeHeat.ts';
import { USUAL_CREST_DB } from '../limits/programmePower.ts';
import { USUAL_PROGRAMME } from '../limits/programmeSpectrum.ts';
import { settleHeat } from '../limits/settleHeat.ts';
import type { Check } from './context.ts';

/** Coils that music leaves hotter than they may be. */
export const hotCoils = (heats: readonly ProgrammeHeat[], crestDb: number): Finding[] =>
  heats.flatMap(({ partId, temperatureC, limitC, powerW }) =>
    temperatureC > limitC
      ? [
          {
            severity: 'danger' as const,
            code: 'finding.coil-heat',
            place: { kind: 'part' as const, id: partId },
            values: { temperatureC, limitC, powerW, crestDb },
          },
        ]
      : [],
  );

/** Share of the allowed rise from which the quick estimate, which may be low behind a crossover, is not trusted. */
const NEAR_SHARE = 0.5;

/** The coils whose heat is stated, once music at the set drive has warmed them until nothing rises. */
export const coilHeat: Check = ({ project, model, simulation }) => {
  const stated = simulation.speakers.flatMap(({ partId }) => {
    const driver = driverOf(project, partId);
    const heat = driver === undefined ? null : coilHeatOf(driver);
    return heat?.isStated === true ? [[partId, heat] as const] : [];
  });
  if (stated.length === 0) return [];
  const programme = {
    bands: USUAL_PROGRAMME,
    crestDb: USUAL_CREST_DB,
    lastsS: Number.POSITIVE_INFINITY,
    startC: project.air.temperatureC,
  };
  const coils = new Map(stated);
  const quick = programmeHeat(simulation, coils, programme);
  const isNear = quick.some(({ riseK, limitC }) => riseK > NEAR_SHARE * (limitC - programme.startC));
  const settled = isNear ? settleHeat(model, coils, programme) : null;
  return hotCoils(settled?.ok ? settled.value.heats : quick, USUAL_CREST_DB);
};

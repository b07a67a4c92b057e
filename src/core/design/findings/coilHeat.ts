import type { Finding } from '../../messages/problem.ts';
import type { ProgrammeHeat } from '../limits/programmeHeat.ts';
import { USUAL_CREST_DB } from '../limits/programmePower.ts';
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

/** The coils whose heat is stated, once music at the set drive has warmed them until nothing rises. Usual values prove nothing. */
export const coilHeat: Check = ({ figures }) =>
  hotCoils(
    figures.coilHeats.filter(({ isStated }) => isStated),
    USUAL_CREST_DB,
  );

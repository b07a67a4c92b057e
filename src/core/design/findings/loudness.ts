import type { Finding } from '../../messages/problem.ts';
import { programmeVoltageV, USUAL_CREST_DB } from '../limits/programmePower.ts';
import type { Check } from './context.ts';

/** Level that ears bear for eight hours a day, and by how much more the time halves, dB. From memory of the usual rule at work. */
export const HEARING_EIGHT_HOURS_DB = 85;
const HALVING_DB = 3;
const EIGHT_HOURS_S = 8 * 3600;
/** From here on the time is a quarter of an hour and less. */
const DANGER_DB = 100;

/** How long in a day a level (dB re 20 µPa, in practice A-weighted) may last, s: eight hours at 85 dB, half for every 3 dB more. */
export const hearingTimeS = (levelDb: number): number =>
  EIGHT_HOURS_S * 2 ** ((HEARING_EIGHT_HOURS_DB - levelDb) / HALVING_DB);

/** A level of music that harms ears in the long run. */
export function loudFor(levelDb: number): Finding[] {
  if (levelDb <= HEARING_EIGHT_HOURS_DB) return [];
  return [
    {
      severity: levelDb >= DANGER_DB ? 'danger' : 'note',
      code: 'finding.hearing',
      place: { kind: 'document' },
      values: { levelDb, timeS: hearingTimeS(levelDb) },
    },
  ];
}

/** Music at the set drive, its peaks as high as the sine's, heard at the listening point. */
export const loudness: Check = ({ figures }) =>
  figures.meanLevelDbSpl === null
    ? []
    : loudFor(figures.meanLevelDbSpl + 20 * Math.log10(programmeVoltageV(1, USUAL_CREST_DB)));

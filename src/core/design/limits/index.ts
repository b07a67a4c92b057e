export { coilHeatOf } from './coilHeatOf.ts';
export { GREATEST_GAIN_DB, type GreatestLevel, greatestLevel } from './greatestLevel.ts';
export { type CoilRises, hotModel } from './hotModel.ts';
export { levelBeforeLimits, SINE_LASTS_S } from './levelBeforeLimits.ts';
export type { LimitedCurve, LimitInput, LimitKind } from './limitInput.ts';
export { type LimitStatements, limitsOf } from './limitsOf.ts';
export { type MusicHeat, musicHeat } from './musicHeat.ts';
export { type Programme, type ProgrammeHeat, programmeHeat } from './programmeHeat.ts';
export { bandMeans, programmeMean, programmePowerW, programmeVoltageV, USUAL_CREST_DB } from './programmePower.ts';
export {
  type ProgrammeBand,
  programmeShares,
  programmeSharesBetween,
  programmeTotal,
  USUAL_PROGRAMME,
} from './programmeSpectrum.ts';
export { type SettledHeat, type Settling, settleHeat } from './settleHeat.ts';
export { type Spare, spareAtDrive } from './spareAtDrive.ts';
export { type LimitChoices, statedLimits } from './statedLimits.ts';

export { type BuildOptions, type BuiltPairs, buildPairs } from './buildPairs.ts';
export { type DrawnPair, drawPair } from './drawPair.ts';
export { type FirstOrderSpread, firstOrderSpread } from './firstOrderSpread.ts';
export { type PairStatistics, pairStatistics, type Share, type ToleranceWindow } from './pairStatistics.ts';
export { partDeviations, spreadDeviation } from './spreadDeviation.ts';
export { type TolerancePart, tighterParts } from './tighterParts.ts';
export type * from './toleranceSpec.ts';

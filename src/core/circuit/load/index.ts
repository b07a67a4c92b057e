export { averageDissipationW, type ClassBStage, worstAverageDissipationW, worstSwing } from './averageDissipation.ts';
export { type CurrentReserve, currentReserve } from './currentReserve.ts';
export { dissipationFactor, peakDissipationOhm } from './dissipationResistance.ts';
export { dampingLeft, impedanceBehind } from './impedanceBehind.ts';
export { loadAdmittance, withLoad } from './loadAdmittance.ts';
export { type RatedImpedanceCheck, ratedImpedanceCheck } from './ratedImpedanceCheck.ts';
export { stepVariationS } from './stepVariation.ts';

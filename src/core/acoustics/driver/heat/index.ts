export * from './coilHeat.ts';
export * from './coilMetal.ts';
export * from './equilibriumRise.ts';
export * from './formerLimits.ts';
export * from './heatPath.ts';
export * from './heatUp.ts';
export * from './hotResistance.ts';
export * from './usualCoilHeat.ts';

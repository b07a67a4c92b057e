export * from './deriveCurve.ts';
export * from './joinNearFar.ts';
export * from './moveDistance.ts';
export * from './nearFieldSum.ts';
export * from './smoothComplex.ts';
export * from './splitPhase.ts';
export * from './validity.ts';

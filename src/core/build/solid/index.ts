export * from './convexSolid.ts';
export * from './halfSpace.ts';
export * from './unionVolume.ts';
export * from './vector.ts';

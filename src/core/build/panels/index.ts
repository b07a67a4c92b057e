export * from './cabinet.ts';
export * from './cutList.ts';
export * from './panel.ts';
export * from './panelsOf.ts';
export * from './proportionsFor.ts';
export * from './standingWaves.ts';
export * from './volumesOf.ts';

export * from './boxLosses.ts';
export * from './leakQFromDip.ts';
export * from './panelMode.ts';
export * from './slitLeak.ts';

export * from './cutting.ts';
export * from './layOutSheets.ts';
export * from './stripsAcross.ts';

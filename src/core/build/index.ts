export * from './coils/index.ts';
export * from './fit/index.ts';
export * from './panels/index.ts';
export * from './sheets/index.ts';
export * from './winding/index.ts';

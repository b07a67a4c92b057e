export { drawSchematic } from './drawSchematic.ts';
export * from './metrics.ts';
export type * from './plan.ts';
export { reduceSeriesParallel, type SeriesParallelReduction } from './reduceSeriesParallel.ts';
export type { SpJoin, SpLeaf, SpTree } from './spTree.ts';

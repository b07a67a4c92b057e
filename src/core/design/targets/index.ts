export { bandWeights, type WeightBand } from './bandWeights.ts';
export { type Target, targetFor } from './target.ts';
export { type Flank, type TargetShape, targetLevelsDb } from './targetShape.ts';

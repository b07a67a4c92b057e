export { type AlignmentMap, alignmentMap, type MapGrid, type MapInput } from './alignmentMap.ts';
export { type DrivenDriver, drivenDriver } from './drivenDriver.ts';
export { mapAxes } from './mapAxes.ts';
export { type LossesAtTuning, lossesAtTuning, type MapLoss, type MapLosses } from './mapLosses.ts';
export {
  type AbsentFamily,
  type PublishedFamily,
  type PublishedPoint,
  type PublishedPoints,
  publishedPoints,
} from './publishedPoints.ts';
export { type SealedCurve, sealedCurve } from './sealedCurve.ts';
export { type LossyVentedBox, type VentedFigures, ventedFigures } from './ventedFigures.ts';

export { brooksFor, brooksInductanceH, brooksSection, inductanceFactor } from './brooksCoil.ts';
export {
  type CoredCoil,
  type CoredCoilFigures,
  type CoreLoss,
  coredCoilFigures,
  coredInductanceH,
  gapForM,
  peakFluxT,
  reluctancePerH,
  saturationCurrentA,
} from './coredCoil.ts';
export {
  AIR_SHARE,
  CORE_MATERIALS,
  type CoreMaterial,
  type CoreMaterialName,
  USUAL_CORE_LOSS_TANGENT,
} from './coreMaterials.ts';
export { currentSheetH } from './currentSheet.ts';
export { type EddyResistance, proximityOhm, squaredFieldSum } from './proximityOhm.ts';
export {
  currentAtDropA,
  describingInductanceH,
  incrementalInductanceH,
  kneeFromRatingA,
  type SaturatingCoil,
  thirdHarmonicRatio,
} from './saturatingCoil.ts';
export { sectionInductanceH } from './sectionInductance.ts';
export { skinDepthM, skinRatio } from './skinResistance.ts';
export { layTurns, type Turn, type TurnLayout } from './turns.ts';
export { turnInductanceH, turnsInductanceH } from './turnsInductance.ts';
export { turnsOhm } from './turnsOhm.ts';
export { estimateError, type Solenoid, wheelerMultilayerH, wheelerSolenoidH } from './wheeler.ts';
export { innerRadiusM, outerRadiusM, sectionOhm, type WindingSection, wireLengthM } from './windingSection.ts';
export { compactOhm, type WindingOffer, type WindingWish, windCompact, windingsFor } from './windingsFor.ts';
export { type Bobbin, type Winding, type WindingStock, windOnBobbin } from './windOnBobbin.ts';

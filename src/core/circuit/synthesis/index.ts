export { type ActiveFilter, activeFilterProblems, filterTransfer } from './activeFilter.ts';
export type { BesselNormalisation } from './besselPolynomial.ts';
export {
  coilConjugate,
  conjugateCoilSection,
  conjugateResonanceSection,
  resonanceConjugate,
} from './conjugateNetwork.ts';
export {
  firstOrderAllPass,
  firstOrderShelf,
  secondOrderAllPass,
  secondOrderLowPass,
} from './elementaryTransfers.ts';
export { type FilterElement, filterElements } from './filterElements.ts';
export { bandPassSection, filterSection } from './filterSection.ts';
export {
  bandPassTransfer,
  type FilterShape,
  highPassPrototype,
  highPassTransfer,
  lowPassPrototype,
  lowPassTransfer,
  prototypePolynomial,
} from './filterShape.ts';
export { firstOrderThreeWay, firstOrderThreeWayConstants, type ThreeWayConstants } from './firstOrderThreeWay.ts';
export { firstOrderTwoWay } from './firstOrderTwoWay.ts';
export { greatestGroupDelay, groupDelayOf } from './groupDelayOf.ts';
export { type LadderElement, ladderElements } from './ladderElements.ts';
export { type LPadEnd, type LPadValues, lPadSection, lPadValues } from './lPad.ts';
export { type MotionalElements, motionalElements } from './motionalElements.ts';
export {
  type Resonance,
  shuntNotchElements,
  shuntNotchSection,
  trapElements,
  trapResistance,
  trapSection,
} from './notch.ts';
export type { Section } from './section.ts';
export { angularFrequency, cascadeOf, movedTo, respond, sumOf, type TransferFunction } from './transferFunction.ts';
export { unwrappedPhase } from './unwrappedPhase.ts';

export { WhyButton } from './WhyButton.tsx';
export { whyLeastImpedance } from './whyLeastImpedance.ts';
export { whyLowEnd } from './whyLowEnd.ts';
export { figure, type WhyInput, type WhyLine, type WhyNote } from './whyNote.ts';
export { whyPortLength } from './whyPortLength.ts';
export { whyQtc } from './whyQtc.ts';
export { whySensitivity } from './whySensitivity.ts';
export { whySpread } from './whySpread.ts';
export { whyTuning } from './whyTuning.ts';

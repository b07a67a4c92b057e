export { CurvePlot } from './CurvePlot.tsx';
export type { CursorPin } from './FrequencyCursor.tsx';
export { frequencyText } from './frequencyText.ts';
export { firstPicture } from './markFirstPicture.ts';
export { PlotBoard } from './PlotBoard.tsx';
export { DOMAIN_HZ } from './plotStructure.ts';

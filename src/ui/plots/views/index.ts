import type { PlotView, Question } from '../view.ts';
import { delayView } from './delayView.ts';
import { loadView } from './loadView.ts';
import { loudestView } from './loudestView.ts';
import { phaseView } from './phaseView.ts';
import { portAirView } from './portAirView.ts';
import { responseView } from './responseView.ts';
import { travelView } from './travelView.ts';

/** The questions that plots answer, in the order of their buttons. */
export const QUESTIONS: readonly {
  readonly id: Question;
  readonly words: string;
  readonly views: readonly PlotView[];
}[] = [
  { id: 'heard', words: 'What is heard', views: [responseView] },
  { id: 'load', words: 'What the amplifier sees', views: [loadView] },
  { id: 'motion', words: 'What moves', views: [travelView, portAirView] },
  { id: 'loudness', words: 'How loud', views: [loudestView] },
  { id: 'arrival', words: 'When it arrives', views: [phaseView, delayView] },
];

export { delayView, loadView, loudestView, phaseView, portAirView, responseView, travelView };

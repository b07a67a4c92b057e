import type { WorkbenchState } from '../../state/workbench.ts';
import type { Picture } from './picture.ts';

/** What a view may look at. */
export type ViewInput = Pick<WorkbenchState, 'project' | 'evaluation' | 'ghosts' | 'settings'>;

export type Question = 'heard' | 'load' | 'motion' | 'loudness' | 'arrival';

/** One way to look at a design: an answer to one of the questions that plots are grouped by. */
export interface PlotView {
  readonly id: string;
  readonly question: Question;
  /** On the button that chooses it. */
  readonly button: string;
  /** Accessible name of the picture. */
  readonly label: string;
  /** null when there is nothing to show: no evaluation yet, or the design has no such thing. */
  picture(input: ViewInput): Picture | null;
  /** What to say when there is no picture. */
  readonly empty: string;
}

import type { Project } from '../../document/schema.ts';
import type { Finding } from '../../messages/problem.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import type { Simulation } from '../../speaker/simulation.ts';
import type { KeyFigures } from '../evaluation.ts';

/** What a check may look at. */
export interface Context {
  readonly project: Project;
  readonly model: SpeakerModel;
  readonly simulation: Simulation;
  readonly figures: KeyFigures;
}

/** One check of the design: says every flaw of its kind that it finds. */
export type Check = (context: Context) => Finding[];

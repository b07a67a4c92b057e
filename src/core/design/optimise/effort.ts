import type { Result } from '../../messages/problem.ts';
import type { Tried } from '../trial/index.ts';
import { type FitOptions, type FitPoint, fitPoint } from './fitPoint.ts';
import { type Criterion, type FitProblem, meritOf, type Scored } from './fitProblem.ts';

export type Stage = 'continuous' | 'preferred';

export interface Progress {
  readonly stage: Stage;
  /** Of the stage, 0 to 1; the second has no known length and ends early. */
  readonly share: number;
  /** The best of this stage so far, and its `meritOf`, for whoever ends the search from outside. */
  readonly best: Scored;
  readonly bestDb: number;
}

/** How a search is followed and ended from outside. */
export interface Control {
  readonly onProgress?: (progress: Progress) => void;
  readonly shouldStop?: () => boolean;
}

/** Thrown inside the search alone, to get out of it from any depth. */
export class Stopped extends Error {}

/** Works out points one after the other in the same buffers, counts them, and looks whether to go on. */
export class Effort {
  evaluations = 0;
  /** How many of them had derivatives. */
  gradients = 0;
  /** The best of any values, and the best of those that can be bought: what is left when the search is stopped. */
  readonly best: Record<Stage, Scored | null> = { continuous: null, preferred: null };
  private tried: Tried | undefined;
  private readonly problem: FitProblem;
  private readonly criterion: Criterion;
  private readonly control: Control;

  constructor(problem: FitProblem, criterion: Criterion, control: Control) {
    this.problem = problem;
    this.criterion = criterion;
    this.control = control;
  }

  /** The point, or null where the circuit cannot be solved there. The one before it is void afterwards. */
  at(values: Float64Array, options: FitOptions): FitPoint | null {
    if (this.control.shouldStop?.() === true) throw new Stopped();
    this.evaluations++;
    if (options.withJacobian) this.gradients++;
    const point: Result<FitPoint> = fitPoint(this.problem, values, options, this.tried);
    if (!point.ok) {
      // What was lent to a solve that failed is not used again.
      this.tried = undefined;
      return null;
    }
    this.tried = point.value.tried;
    this.keep('continuous', point.value.scored);
    return point.value;
  }

  merit(scored: Scored): number {
    return meritOf(scored, this.criterion);
  }

  keep(stage: Stage, scored: Scored): void {
    const best = this.best[stage];
    if (best === null || this.merit(scored) < this.merit(best)) this.best[stage] = scored;
  }

  tell(stage: Stage, share: number): void {
    const best = this.best[stage];
    if (best !== null) this.control.onProgress?.({ stage, share, best, bestDb: this.merit(best) });
  }
}

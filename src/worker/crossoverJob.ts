import type {
  BuiltPairs,
  Criterion,
  HeardAngle,
  Limits,
  Optimised,
  Progress,
  Stocks,
  TargetShape,
  ToleranceSpec,
  TrialCurve,
  TrialVariable,
  ValueBounds,
  WeightBand,
} from '../core/design/index.ts';
import type { Project } from '../core/document/schema.ts';
import type { Result } from '../core/messages/problem.ts';

/** What every job on a crossover begins with; plain data that can be posted. */
interface CrossoverJobBase {
  readonly project: Project;
  /** Listening points that curves count from 0; the first is the one that limits and powers belong to. */
  readonly angles: readonly HeardAngle[];
  readonly sweep: { readonly fromHz: number; readonly toHz: number; readonly count: number };
}

export interface OptimiseJob extends CrossoverJobBase {
  readonly kind: 'optimise';
  /** With the bounds of each. */
  readonly variables: readonly (TrialVariable & ValueBounds)[];
  readonly targets: readonly {
    readonly curve: TrialCurve;
    readonly shape: TargetShape;
    readonly bands: readonly WeightBand[];
  }[];
  readonly limits: Limits;
  /** null: any values. */
  readonly stocks: Stocks | null;
  readonly starts: number;
  readonly seed: number;
  readonly criterion: Criterion;
}

export interface ToleranceJob extends CrossoverJobBase {
  readonly kind: 'tolerance';
  readonly spec: ToleranceSpec;
  readonly curve: TrialCurve;
  /** Pairs `first` to `first + pairs - 1`: the work may be shared out among workers. */
  readonly first: number;
  readonly pairs: number;
}

export type CrossoverJob = OptimiseJob | ToleranceJob;

/**
 * What is heard of a job: progress with the best so far, or built pairs piece by piece, so that whoever ends the worker keeps
 * what there is; then the outcome and nothing more.
 */
export type CrossoverAnswer =
  | { readonly kind: 'progress'; readonly progress: Progress }
  | { readonly kind: 'built'; readonly built: BuiltPairs; readonly share: number }
  | { readonly kind: 'optimised'; readonly result: Result<Optimised> }
  | { readonly kind: 'all-built'; readonly result: Result<null> };

export type { Control, Progress, Stage } from './effort.ts';
export {
  boundsAround,
  type Criterion,
  type FitProblem,
  type Limits,
  meritOf,
  NO_LIMITS,
  type PriceLaw,
  type Scored,
  type ValueBounds,
} from './fitProblem.ts';
export { type Ending, type Optimised, type OptimiseOptions, optimise } from './optimise.ts';
export { type Choices, preferredChoices, roundedValues, type Stock, type Stocks } from './preferredChoices.ts';
export type { Proof } from './searchPreferred.ts';

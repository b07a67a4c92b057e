import type { HeatPath } from './heatPath.ts';

/** First step as a share of the fastest time constant, and the growth from step to step: errors below 0.1 % of the rise. */
const FIRST_STEP_SHARE = 0.02;
const STEP_GROWTH = 1.2;

/**
 * Rises of several coils after a time, K, when the power in each depends on how hot all of them are: each term obeys
 * τ dx/dt = R P - x, and a coil's rise is the sum of its terms.
 *
 * `powersW(risesK)` gives the power in each coil, one for each path. Every term is stepped exactly under the power of the
 * step's middle (exponential midpoint rule, second order); steps grow from 1/50 of the fastest time constant by a fifth each.
 * `timeS` finite. Error below 0.1 % of the rise against a fourth-order integration with fine steps.
 * @example heatUp([path], ([riseK]) => [coldW / (1 + 0.00393 * riseK!)], 60)
 */
export function heatUp(
  paths: readonly HeatPath[],
  powersW: (risesK: readonly number[]) => readonly number[],
  timeS: number,
): number[] {
  let terms = paths.map((path) => path.map(() => 0));
  const risesOf = (state: readonly (readonly number[])[]): number[] =>
    state.map((own) => own.reduce((sum, x) => sum + x, 0));
  const stepped = (powers: readonly number[], stepS: number): number[][] =>
    paths.map((path, coil) =>
      path.map(({ resistanceKPerW, timeConstantS }, k) => {
        const goal = resistanceKPerW * powers[coil]!;
        return goal + (terms[coil]![k]! - goal) * Math.exp(-stepS / timeConstantS);
      }),
    );
  let stepS = FIRST_STEP_SHARE * Math.min(timeS, ...paths.flat().map((term) => term.timeConstantS));
  for (let passedS = 0; passedS < timeS; stepS *= STEP_GROWTH) {
    const takenS = Math.min(stepS, timeS - passedS);
    const middle = stepped(powersW(risesOf(terms)), takenS / 2);
    terms = stepped(powersW(risesOf(middle)), takenS);
    passedS = takenS < stepS ? timeS : passedS + takenS;
  }
  return risesOf(terms);
}

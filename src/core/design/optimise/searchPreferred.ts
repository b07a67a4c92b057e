import { closestChoices } from './closestChoices.ts';
import { dampedSteps } from './dampedSteps.ts';
import type { Effort } from './effort.ts';
import { exchange } from './exchange.ts';
import { SQUARES } from './fitPoint.ts';
import type { FitProblem, Scored } from './fitProblem.ts';
import { fixOneByOne } from './fixOneByOne.ts';
import { normalEquations } from './normalEquations.ts';
import { type Choices, roundedValues } from './preferredChoices.ts';
import type { Found } from './searchContinuous.ts';
import { choicesAround, MOST_SETS, setCount, tryAll } from './tryAll.ts';

/**
 * How the choices were found. `all-tried`: the best of every set within two steps of the continuous design. `exchanged`: no
 * exchange of one part by up to two steps, or of two by one step, makes it better.
 */
export type Proof = 'all-tried' | 'exchanged';

const CANDIDATES = 12;
const EXCHANGED = 3;

/**
 * Values that can be bought, from continuous designs, best first: few parts by trying all; more by the closest point of the
 * quadratic, by fixing one part after the other, and by plain rounding, the best of which are then improved by exchanges.
 * What was found is in `effort.best.preferred`, which is never worse than `rounded`.
 */
export function searchPreferred(
  problem: FitProblem,
  choices: Choices,
  effort: Effort,
  found: readonly Found[],
  rounded: Scored,
): Proof {
  effort.keep('preferred', rounded);
  const [first] = found;
  if (first === undefined) return 'exchanged';
  const lists = choicesAround(first.point.scored.values, choices);
  if (choices.every((list) => list !== null) && setCount(lists) <= MOST_SETS) {
    tryAll(effort, lists);
    return 'all-tried';
  }
  const candidates: { readonly scored: Scored; readonly from: Found }[] = [{ scored: rounded, from: first }];
  const add = (values: Float64Array, from: Found): void => {
    const point = effort.at(values, { multipliers: from.multipliers, norm: SQUARES, withJacobian: false });
    if (point === null || candidates.some(({ scored }) => isSame(scored.values, values))) return;
    effort.keep('preferred', point.scored);
    candidates.push({ scored: point.scored, from });
  };
  found.forEach((from, nth) => {
    const { scored, jacobian, residuals } = from.point;
    const { matrix } = normalEquations(jacobian!, residuals);
    for (const values of closestChoices(matrix, scored.values, choices, CANDIDATES)) add(within(problem, values), from);
    add(roundedValues(scored.values, choices), from);
    add(fixOneByOne(problem, choices, effort, from, false), from);
    add(fixOneByOne(problem, choices, effort, from, true), from);
    effort.tell('preferred', (0.5 * (nth + 1)) / found.length);
  });
  candidates.sort((a, b) => effort.merit(a.scored) - effort.merit(b.scored));
  candidates.slice(0, EXCHANGED).forEach(({ scored, from }, nth) => {
    const settled = exchange(effort, scored.values, choices, from.multipliers);
    if (settled !== null) followFree(problem, choices, effort, settled, from);
    effort.tell('preferred', 0.5 + (0.5 * (nth + 1)) / EXCHANGED);
  });
  return 'exchanged';
}

/** Parts of any value take what is best for the chosen ones. */
function followFree(problem: FitProblem, choices: Choices, effort: Effort, scored: Scored, from: Found): void {
  if (choices.every((list) => list !== null)) return;
  const stepped = dampedSteps(effort, scored.values, {
    bounds: problem.bounds,
    isFixed: Uint8Array.from(choices, (list) => (list === null ? 0 : 1)),
    multipliers: from.multipliers,
    norm: SQUARES,
    mostIterations: 20,
  });
  if (stepped !== null) effort.keep('preferred', stepped.point.scored);
}

const isSame = (a: Float64Array, b: Float64Array): boolean => a.every((value, i) => value === b[i]);

const within = ({ bounds }: FitProblem, values: Float64Array): Float64Array =>
  values.map((value, i) => Math.min(bounds[i]!.greatest * (1 + 1e-9), Math.max(bounds[i]!.least * (1 - 1e-9), value)));

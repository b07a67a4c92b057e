import type { Effort } from './effort.ts';
import { SQUARES } from './fitPoint.ts';
import type { Scored } from './fitProblem.ts';
import { type Choices, nearestChoice } from './preferredChoices.ts';

/** Choices either side of the nearest that are tried. */
export const STEPS_TRIED = 2;
/** More sets than this are not tried one by one. */
export const MOST_SETS = 20_000;

/** The choices within two steps of a design, parts of any value left as they are. */
export const choicesAround = (values: Float64Array, choices: Choices): Float64Array[] =>
  choices.map((list, i) => {
    if (list === null) return Float64Array.of(values[i]!);
    const at = nearestChoice(list, values[i]!);
    return list.slice(Math.max(0, at - STEPS_TRIED), at + STEPS_TRIED + 1);
  });

export const setCount = (lists: readonly Float64Array[]): number =>
  lists.reduce((count, list) => count * list.length, 1);

/** Tries every set of these choices: the best is proved to be the best of them. */
export function tryAll(effort: Effort, lists: readonly Float64Array[]): Scored | null {
  const sets = setCount(lists);
  let best: Scored | null = null;
  for (let set = 0; set < sets; set++) {
    let rest = set;
    const values = Float64Array.from(lists, (list) => {
      const value = list[rest % list.length]!;
      rest = Math.floor(rest / list.length);
      return value;
    });
    const point = effort.at(values, { multipliers: null, norm: SQUARES, withJacobian: false });
    if (point === null) continue;
    effort.keep('preferred', point.scored);
    if (best === null || effort.merit(point.scored) < effort.merit(best)) best = point.scored;
    if (set % 100 === 0) effort.tell('preferred', set / sets);
  }
  return best;
}

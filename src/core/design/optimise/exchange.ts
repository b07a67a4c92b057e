import type { Effort } from './effort.ts';
import { type FitPoint, type Multipliers, SQUARES } from './fitPoint.ts';
import type { Scored } from './fitProblem.ts';
import { normalEquations } from './normalEquations.ts';
import { type Choices, nearestChoice } from './preferredChoices.ts';

interface Move {
  /** Variables with the index of the choice each of them goes to. */
  readonly to: readonly (readonly [number, number])[];
  readonly predicted: number;
}

/** Nothing smaller counts as better, dB. */
const LEAST_GAIN_DB = 1e-9;

/**
 * Exchanges one part by up to two steps, or two parts by one step each, until no such exchange makes the design better. The
 * order of trying is by what the derivatives promise; at the end every exchange has been tried in vain.
 */
export function exchange(
  effort: Effort,
  start: Float64Array,
  choices: Choices,
  multipliers: Multipliers | null,
): Scored | null {
  const options = { multipliers, norm: SQUARES };
  let point = effort.at(start, { ...options, withJacobian: true });
  if (point === null) return null;
  effort.keep('preferred', point.scored);
  for (;;) {
    const here: FitPoint = point;
    let better: Float64Array | null = null;
    for (const move of movesFrom(here, choices)) {
      const values = here.scored.values.slice();
      for (const [i, at] of move.to) values[i] = choices[i]![at]!;
      const there = effort.at(values, { ...options, withJacobian: false });
      if (there === null || effort.merit(there.scored) >= effort.merit(here.scored) - LEAST_GAIN_DB) continue;
      effort.keep('preferred', there.scored);
      better = values;
      break;
    }
    if (better === null) return here.scored;
    point = effort.at(better, { ...options, withJacobian: true });
    if (point === null) return here.scored;
  }
}

/** Every exchange, the most promising first by the quadratic of the derivatives. */
function movesFrom(point: FitPoint, choices: Choices): Move[] {
  const { values } = point.scored;
  const { matrix, right } = normalEquations(point.jacobian!, point.residuals);
  const single: { readonly i: number; readonly at: number; readonly step: number; readonly by: number }[] = [];
  choices.forEach((list, i) => {
    if (list === null) return;
    const now = nearestChoice(list, values[i]!);
    for (const by of [-2, -1, 1, 2]) {
      const value = list[now + by];
      if (value !== undefined) single.push({ i, at: now + by, step: Math.log(value / values[i]!), by });
    }
  });
  const alone = single.map(({ i, step }) => step * (2 * right[i]! + matrix[i]![i]! * step));
  const moves: Move[] = single.map(({ i, at }, k) => ({ to: [[i, at]], predicted: alone[k]! }));
  single.forEach((a, k) => {
    if (Math.abs(a.by) > 1) return;
    for (let m = 0; m < k; m++) {
      const b = single[m]!;
      if (Math.abs(b.by) > 1 || b.i === a.i) continue;
      const predicted = alone[k]! + alone[m]! + 2 * matrix[a.i]![b.i]! * a.step * b.step;
      moves.push({
        to: [
          [a.i, a.at],
          [b.i, b.at],
        ],
        predicted,
      });
    }
  });
  return moves.sort((a, b) => a.predicted - b.predicted);
}

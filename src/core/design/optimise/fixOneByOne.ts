import { dampedSteps } from './dampedSteps.ts';
import type { Effort } from './effort.ts';
import { type FitPoint, SQUARES } from './fitPoint.ts';
import type { FitProblem } from './fitProblem.ts';
import { lowerTriangle, normalEquations, partOf, solveTriangles } from './normalEquations.ts';
import { type Choices, nearestChoice } from './preferredChoices.ts';
import type { Found } from './searchContinuous.ts';

const ITERATIONS = 4;

/**
 * Takes one part after the other to a choice and lets the rest follow. First comes the part that loses least by it, or, with
 * `surestFirst`, the one that has the least room to move: two ways to different ends.
 */
export function fixOneByOne(
  problem: FitProblem,
  choices: Choices,
  effort: Effort,
  { point, multipliers }: Found,
  surestFirst: boolean,
): Float64Array {
  let values = point.scored.values.slice();
  let here: FitPoint = point;
  const isFixed = new Uint8Array(values.length);
  const open = new Set(choices.flatMap((list, i) => (list === null ? [] : [i])));
  while (open.size > 0) {
    const { index, value } = nextToFix(here, values, choices, isFixed, open, surestFirst);
    values = values.slice();
    values[index] = value;
    isFixed[index] = 1;
    open.delete(index);
    const rest = dampedSteps(effort, values, {
      bounds: problem.bounds,
      isFixed,
      multipliers,
      norm: SQUARES,
      mostIterations: ITERATIONS,
    });
    if (rest === null) continue;
    here = rest.point;
    values = here.scored.values.slice();
  }
  return values;
}

function nextToFix(
  point: FitPoint,
  values: Float64Array,
  choices: Choices,
  isFixed: Uint8Array,
  open: ReadonlySet<number>,
  surestFirst: boolean,
): { readonly index: number; readonly value: number } {
  const { matrix, right } = normalEquations(point.jacobian!, point.residuals);
  const left = Array.from(values.keys()).filter((i) => isFixed[i] === 0);
  const part = partOf(matrix, left);
  const mean = part.reduce((sum, row, i) => sum + row[i]!, 0) / left.length;
  part.forEach((row, i) => {
    row[i]! += 1e-6 * mean + 1e-300;
  });
  const lower = lowerTriangle(part);
  let best = { index: -1, value: 0, rank: Number.POSITIVE_INFINITY };
  left.forEach((i, k) => {
    const list = choices[i];
    if (!list || !open.has(i)) return;
    // How far the others let it move: 1 / (A⁻¹)_kk is the curvature when they follow.
    const unit = new Float64Array(left.length);
    unit[k] = 1;
    const curvature = lower === null ? matrix[i]![i]! : 1 / solveTriangles(lower, unit)[k]!;
    const nearest = nearestChoice(list, values[i]!);
    for (const at of [nearest - 1, nearest, nearest + 1]) {
      const value = list[at];
      if (value === undefined) continue;
      const step = Math.log(value / values[i]!);
      const loss = curvature * step * step + 2 * right[i]! * step;
      // Of the surest part, the choice that loses less.
      const rank = surestFirst ? -curvature + 1e-9 * curvature * Math.abs(step) : loss;
      if (rank < best.rank) best = { index: i, value, rank };
    }
  });
  return best;
}

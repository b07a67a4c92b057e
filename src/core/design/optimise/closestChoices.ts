import { lowerTriangle, type Matrix, partOf, solveTriangles } from './normalEquations.ts';
import { type Choices, nearestChoice } from './preferredChoices.ts';

/** Choices further from the optimum than this factor are not looked at: the quadratic means nothing there. */
const TRUST_FACTOR = 1.7;
const MOST_NODES = 20_000;

/**
 * Sets of choices for which the quadratic (x - x0)' A (x - x0) in the logarithms is least, best first: at most `count`. The
 * error near an optimum is this quadratic, so rounding all parts at once and well is the closest point of a lattice that is
 * askew; plain rounding takes it for square. Parts of any value follow the others.
 *
 * Depth-first with the best branch first; a branch ends when its part of the sum passes the `count`-th best. Exact for the
 * quadratic unless `MOST_NODES` are looked at.
 * Source: C. P. Schnorr, M. Euchner, "Lattice basis reduction", 1994; E. Agrell and others, "Closest point search in
 * lattices", IEEE Trans. Inf. Theory 48, 2002; order of the parts after the V-BLAST detector (all from memory).
 * @example closestChoices(matrix, optimum, choices, 16)
 */
export function closestChoices(matrix: Matrix, optimum: Float64Array, choices: Choices, count: number): Float64Array[] {
  const discrete: number[] = [];
  const free: number[] = [];
  choices.forEach((list, i) => {
    (list === null ? free : discrete).push(i);
  });
  const reduced = withoutFree(regular(matrix), discrete, free);
  const order = searchOrder(reduced);
  const lower = lowerTriangle(partOf(reduced, order));
  if (lower === null || discrete.length === 0) return [];
  const lists = order.map((k) => {
    const value = optimum[discrete[k]!]!;
    const all = choices[discrete[k]!]!;
    const near = all.filter((x) => Math.abs(Math.log(x / value)) <= Math.log(TRUST_FACTOR));
    return (near.length > 0 ? near : all.slice(nearestChoice(all, value)).slice(0, 1)).map((x) => Math.log(x / value));
  });
  return bestLeaves(lower, lists, count).map((steps) => {
    const values = optimum.slice();
    order.forEach((k, place) => {
      const i = discrete[k]!;
      const list = choices[i]!;
      values[i] = list[nearestChoice(list, optimum[i]! * Math.exp(steps[place]!))]!;
    });
    return followed(values, optimum, matrix, discrete, free);
  });
}

/** Directions in which nothing changes get a little weight, so that the nearest choice is taken there. */
function regular(matrix: Matrix): Float64Array[] {
  const mean = matrix.reduce((sum, row, i) => sum + row[i]!, 0) / matrix.length;
  return matrix.map((row, i) => row.map((x, j) => (i === j ? x + 1e-6 * mean + 1e-300 : x)));
}

/** What is left of the quadratic when the free ones always take their best: A_dd - A_df A_ff⁻¹ A_fd. */
function withoutFree(matrix: Matrix, discrete: readonly number[], free: readonly number[]): Float64Array[] {
  const out = partOf(matrix, discrete);
  const lower = lowerTriangle(partOf(matrix, free));
  if (free.length === 0 || lower === null) return out;
  discrete.forEach((j, column) => {
    const answer = solveTriangles(
      lower,
      Float64Array.from(free, (i) => matrix[i]![j]!),
    );
    discrete.forEach((i, row) => {
      free.forEach((k, at) => {
        out[row]![column]! -= matrix[i]![k]! * answer[at]!;
      });
    });
  });
  return out;
}

/** Last, so looked at first: the part that is surest of its value when the others may still follow. */
function searchOrder(matrix: Matrix): number[] {
  const left = Array.from(matrix.keys());
  const order: number[] = [];
  while (left.length > 0) {
    const lower = lowerTriangle(partOf(matrix, left));
    let surest = 0;
    let least = Number.POSITIVE_INFINITY;
    left.forEach((_, k) => {
      const unit = new Float64Array(left.length);
      unit[k] = 1;
      const spread = lower === null ? -matrix[left[k]!]![left[k]!]! : solveTriangles(lower, unit)[k]!;
      if (spread < least) [surest, least] = [k, spread];
    });
    order.unshift(...left.splice(surest, 1));
  }
  return order;
}

/** The `count` best leaves of the tree whose sum is Σ_k (L_kk (x_k + Σ_{i>k} L_ik / L_kk x_i))². */
function bestLeaves(lower: Matrix, lists: readonly Float64Array[], count: number): Float64Array[] {
  const size = lists.length;
  const best: { readonly sum: number; readonly steps: Float64Array }[] = [];
  const steps = new Float64Array(size);
  let nodes = 0;
  const visit = (k: number, sum: number): void => {
    if (k < 0) {
      const at = best.findIndex((other) => sum < other.sum);
      best.splice(at < 0 ? best.length : at, 0, { sum, steps: steps.slice() });
      if (best.length > count) best.pop();
      return;
    }
    let shift = 0;
    for (let i = k + 1; i < size; i++) shift += lower[i]![k]! * steps[i]!;
    const pivot = lower[k]![k]!;
    const added = Array.from(lists[k]!, (x) => ({ x, sum: sum + (pivot * x + shift) ** 2 })).sort(
      (a, b) => a.sum - b.sum,
    );
    for (const next of added) {
      if (best.length === count && next.sum >= best[count - 1]!.sum) break;
      if (++nodes > MOST_NODES && best.length > 0) return;
      steps[k] = next.x;
      visit(k - 1, next.sum);
    }
  };
  visit(size - 1, 0);
  return best.map((leaf) => leaf.steps);
}

/** Free values take what is best for the chosen ones: x_f = -A_ff⁻¹ A_fd x_d. */
function followed(
  values: Float64Array,
  optimum: Float64Array,
  matrix: Matrix,
  discrete: readonly number[],
  free: readonly number[],
): Float64Array {
  const lower = lowerTriangle(partOf(regular(matrix), free));
  if (free.length === 0 || lower === null) return values;
  const right = Float64Array.from(free, (i) =>
    discrete.reduce((sum, j) => sum - matrix[i]![j]! * Math.log(values[j]! / optimum[j]!), 0),
  );
  solveTriangles(lower, right).forEach((x, k) => {
    values[free[k]!] = optimum[free[k]!]! * Math.exp(x);
  });
  return values;
}

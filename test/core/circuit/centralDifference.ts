import type { Complexes } from '../../../src/core/circuit/index.ts';

const LEVELS = 7;
const SHRINK = 2;

/**
 * Derivative of a complex curve with x at 0, from central differences at ever smaller steps, extrapolated to step 0; at each
 * point of the curve the entry of the table whose neighbours agree best with it. No knowledge of the derivative goes in.
 * Source: C. J. F. Ridders, "Accurate computation of F'(x) and F'(x) F''(x)", Advances in Engineering Software 4, 1982.
 */
export function centralDifference(curveAt: (x: number) => Complexes, firstStep: number): Complexes {
  const rows: Complexes[][] = [];
  let best: Complexes | null = null;
  let errors = new Float64Array(0);
  for (let level = 0; level < LEVELS; level++) {
    const step = firstStep / SHRINK ** level;
    const [up, down] = [curveAt(step), curveAt(-step)];
    const row = [combined(up, 1 / (2 * step), down, -1 / (2 * step))];
    for (let order = 1; order <= level; order++) {
      const factor = SHRINK ** (2 * order);
      const [finer, coarser] = [row[order - 1]!, rows[level - 1]![order - 1]!];
      row.push(combined(finer, factor / (factor - 1), coarser, -1 / (factor - 1)));
    }
    rows.push(row);
    if (best === null) {
      best = { re: row[0]!.re.slice(), im: row[0]!.im.slice() };
      errors = new Float64Array(best.re.length).fill(Number.POSITIVE_INFINITY);
      continue;
    }
    for (let order = 1; order <= level; order++) {
      const [here, finer, coarser] = [row[order]!, row[order - 1]!, rows[level - 1]![order - 1]!];
      for (let f = 0; f < errors.length; f++) {
        const error = Math.max(apart(here, finer, f), apart(here, coarser, f));
        if (error >= errors[f]!) continue;
        errors[f] = error;
        best.re[f] = here.re[f]!;
        best.im[f] = here.im[f]!;
      }
    }
  }
  return best!;
}

const apart = (a: Complexes, b: Complexes, f: number): number => Math.hypot(a.re[f]! - b.re[f]!, a.im[f]! - b.im[f]!);

const combined = (a: Complexes, p: number, b: Complexes, q: number): Complexes => ({
  re: a.re.map((x, f) => p * x + q * b.re[f]!),
  im: a.im.map((x, f) => p * x + q * b.im[f]!),
});

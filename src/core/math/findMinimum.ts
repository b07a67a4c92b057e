import type { SearchOutcome } from './findRoot.ts';

const GOLDEN = (3 - Math.sqrt(5)) / 2;

/**
 * The lowest point of f between a and b: Brent's golden section with parabolic steps; a local one if there are several.
 *
 * `tolerance` is relative to x (not below 1e-8: a minimum of a double cannot be placed closer than √ε). An end is returned
 * when f falls towards it. Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 5 (from memory).
 *
 * Example: findMinimum((x) => (x - 2) ** 2, 0, 5, 1e-8).x = 2
 */
export const findMinimum = (
  f: (x: number) => number,
  from: number,
  to: number,
  tolerance: number,
  maximumIterations = 200,
): SearchOutcome => {
  let [a, b] = from < to ? [from, to] : [to, from];
  const floor = 1e-12 * Math.max(Math.abs(a), Math.abs(b), 1e-300);
  let x = a + GOLDEN * (b - a);
  let [w, v] = [x, x];
  let fx = f(x);
  let [fw, fv] = [fx, fx];
  let d = 0;
  let e = 0;
  for (let iterations = 0; iterations < maximumIterations; iterations++) {
    const middle = (a + b) / 2;
    const close = Math.max(tolerance, 1e-8) * Math.abs(x) + floor;
    if (Math.abs(x - middle) <= 2 * close - (b - a) / 2) return { x, value: fx, converged: true, iterations };
    let golden = true;
    if (Math.abs(e) > close) {
      const r = (x - w) * (fx - fv);
      let q = (x - v) * (fx - fw);
      let p = (x - v) * q - (x - w) * r;
      q = 2 * (q - r);
      if (q > 0) p = -p;
      q = Math.abs(q);
      const before = e;
      e = d;
      if (Math.abs(p) < Math.abs((q * before) / 2) && p > q * (a - x) && p < q * (b - x)) {
        d = p / q;
        const next = x + d;
        if (next - a < 2 * close || b - next < 2 * close) d = middle >= x ? close : -close;
        golden = false;
      }
    }
    if (golden) {
      e = x >= middle ? a - x : b - x;
      d = GOLDEN * e;
    }
    const u = x + (Math.abs(d) >= close ? d : Math.sign(d) * close);
    const fu = f(u);
    if (fu <= fx) {
      if (u >= x) a = x;
      else b = x;
      [v, w, x] = [w, x, u];
      [fv, fw, fx] = [fw, fx, fu];
    } else {
      if (u < x) a = u;
      else b = u;
      if (fu <= fw || w === x) {
        [v, w] = [w, u];
        [fv, fw] = [fw, fu];
      } else if (fu <= fv || v === x || v === w) {
        v = u;
        fv = fu;
      }
    }
  }
  return { x, value: fx, converged: false, iterations: maximumIterations };
};

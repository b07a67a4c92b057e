/** Nodes in (−1, 1) and weights that add to 2. */
export interface Quadrature {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

const made = new Map<number, Quadrature>();

/**
 * Gauss-Legendre rule with `count` points (1 to 200): exact for polynomials up to degree 2 count − 1.
 *
 * Newton on the Legendre recurrence from Tricomi's start; nodes and weights to a few 1e-16. Kept once made: treat as read-only.
 * Source: Abramowitz & Stegun 25.4.29 and table 25.4.
 *
 * Example: gaussLegendre(2).nodes = [-0.5773502691896257, 0.5773502691896257]
 */
export const gaussLegendre = (count: number): Quadrature => {
  if (!Number.isInteger(count) || count < 1 || count > 200) throw new RangeError(`no Gauss rule with ${count} points`);
  const known = made.get(count);
  if (known) return known;
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let step = 0; step < 12; step++) {
      let below = 0;
      let here = 1;
      for (let n = 1; n <= count; n++) {
        const next = ((2 * n - 1) * x * here - (n - 1) * below) / n;
        below = here;
        here = next;
      }
      slope = (count * (x * here - below)) / (x * x - 1);
      const change = here / slope;
      x -= change;
      if (Math.abs(change) < 1.2e-16) break;
    }
    nodes[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  const rule = { nodes, weights };
  made.set(count, rule);
  return rule;
};

/** Beyond this argument the reflected series converges faster: the fixed point of x → (1-x)/(1+x). */
const SPLIT = Math.SQRT2 - 1;

const oddSeries = (x: number): number => {
  const square = x * x;
  let power = x;
  let sum = x;
  for (let m = 3; power > 1e-18 * sum && m < 60; m += 2) {
    power *= square;
    sum += power / (m * m);
  }
  return sum;
};

/**
 * Legendre's chi function of order 2 at e^(-u), u ≥ 0: x + x³/9 + x⁵/25 + ..., which is half of Li2(x) - Li2(-x).
 *
 * Error below 1e-15. At most 23 terms, since χ2((1-x)/(1+x)) + χ2(x) = π²/8 + ½ ln x ln((1+x)/(1-x)).
 * Source: L. Lewin, Polylogarithms and Associated Functions (1981), from memory; checked against quadrature.
 * Example: `legendreChi(0)` is π²/8.
 */
export function legendreChi(u: number): number {
  const x = Math.exp(-u);
  if (x <= SPLIT) return oddSeries(x);
  const reflected = Math.tanh(u / 2);
  if (reflected === 0) return Math.PI ** 2 / 8;
  return Math.PI ** 2 / 8 + (u / 2) * Math.log(reflected) - oddSeries(reflected);
}

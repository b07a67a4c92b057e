import { add, type Complex, complex, gaussLegendre, multiply } from '../../../../src/core/math/index.ts';

// Independent of the form under test: a thin rigid disc of radius 1 in a plane wave. The pressure jump Σ a_n P_2n+1(√(1 − r²)) has the
// Hankel transform c_n j_2n+1(λ)/λ, c_n = (2n + 1)|P_2n(0)|. Galerkin on ∂p/∂z = 0: Σ_n a_n ∫ √(λ² − k²) A_m A_n λ dλ =
// 2jk cos θ A_m(k sin θ), of which the static part ∫ λ² A_m A_n dλ is c_m² π/(2(4m + 3)) on the diagonal. By reciprocity half the
// jump at a place is what a small driver there, front and back, radiates to the wave's far origin, re the infinite baffle.

const ORDER = 9;
const LEGENDRE_AT_0 = Array.from({ length: ORDER }, (_, n) => {
  let p = 1;
  for (let i = 1; i <= n; i++) p *= (2 * i - 1) / (2 * i);
  return p;
});
const FACTORS = LEGENDRE_AT_0.map((p, n) => (2 * n + 1) * p);

/** j_1, j_3, ... by downward recurrence from far above. */
const oddSphericalBessel = (x: number): number[] => {
  const top = 2 * ORDER + 20 + Math.ceil(x);
  const values = new Float64Array(top + 2);
  values[top] = 1e-290;
  for (let n = top; n > 0; n--) {
    values[n - 1] = ((2 * n + 1) / x) * values[n]! - values[n + 1]!;
    if (Math.abs(values[n - 1]!) > 1e200) for (let m = n - 1; m <= top; m++) values[m] = values[m]! * 1e-250;
  }
  const sine = Math.sin(x) / x;
  const next = Math.sin(x) / x ** 2 - Math.cos(x) / x;
  const scale = Math.abs(sine) > Math.abs(next) ? sine / values[0]! : next / values[1]!;
  return Array.from({ length: ORDER }, (_, n) => values[2 * n + 1]! * scale);
};

const transforms = (lambda: number): number[] =>
  lambda === 0
    ? FACTORS.map((_, n) => (n === 0 ? 1 / 3 : 0))
    : oddSphericalBessel(lambda).map((j, n) => (FACTORS[n]! * j) / lambda);

const solveComplex = (matrix: Complex[][], right: Complex[]): Complex[] => {
  const n = right.length;
  const a = matrix.map((row, i) => [...row, right[i]!]);
  const over = (x: Complex, y: Complex): Complex => {
    const d = y.re ** 2 + y.im ** 2;
    return { re: (x.re * y.re + x.im * y.im) / d, im: (x.im * y.re - x.re * y.im) / d };
  };
  for (let i = 0; i < n; i++) {
    for (let k = i + 1; k < n; k++) {
      const factor = over(a[k]![i]!, a[i]![i]!);
      for (let m = i; m <= n; m++) a[k]![m] = add(a[k]![m]!, multiply(complex(-factor.re, -factor.im), a[i]![m]!));
    }
  }
  const out: Complex[] = [];
  for (let i = n - 1; i >= 0; i--) {
    let rest = a[i]![n]!;
    for (let m = i + 1; m < n; m++) rest = add(rest, multiply(complex(-1), multiply(a[i]![m]!, out[m]!)));
    out[i] = over(rest, a[i]![i]!);
  }
  return out;
};

/** Far pressure at an angle (rad) of a small driver at the disc's centre, or on axis of one at `place` radii, for ka; re the infinite baffle. */
export const discDipole = (ka: number, angleRad: number, place: number): Complex => {
  const matrix: Complex[][] = FACTORS.map((c, m) =>
    FACTORS.map((_, n) => complex(m === n ? (c * c * Math.PI) / (2 * (4 * m + 3)) : 0)),
  );
  const addPoint = (lambda: number, root: Complex, weight: number): void => {
    const a = transforms(lambda);
    const excess = complex(weight * lambda * (root.re - lambda), weight * lambda * root.im);
    for (let m = 0; m < ORDER; m++)
      for (let n = 0; n < ORDER; n++) matrix[m]![n] = add(matrix[m]![n]!, multiply(complex(a[m]! * a[n]!), excess));
  };
  const { nodes, weights } = gaussLegendre(40);
  for (let i = 0; i < nodes.length; i++) {
    const t = ((1 + nodes[i]!) * Math.PI) / 4;
    addPoint(ka * Math.sin(t), complex(0, ka * Math.cos(t)), (weights[i]! * Math.PI * ka * Math.cos(t)) / 4);
  }
  // Beyond k by λ = k cosh t; the excess falls as λ^-4.
  const end = Math.acosh(120 / ka);
  const panels = 30;
  for (let panel = 0; panel < panels; panel++)
    for (let i = 0; i < nodes.length; i++) {
      const t = (end * (panel + (1 + nodes[i]!) / 2)) / panels;
      addPoint(ka * Math.cosh(t), complex(ka * Math.sinh(t)), (weights[i]! * end * ka * Math.sinh(t)) / (2 * panels));
    }
  const incident = transforms(ka * Math.sin(angleRad));
  const jump = solveComplex(
    matrix,
    incident.map((a) => complex(0, 2 * ka * Math.cos(angleRad) * a)),
  );
  const u = Math.sqrt(1 - place ** 2);
  let sum = complex(0);
  let [before, here] = [1, u];
  for (let degree = 1; degree < 2 * ORDER; degree++) {
    if (degree % 2 === 1) sum = add(sum, multiply(jump[(degree - 1) / 2]!, complex(here / 2)));
    [before, here] = [here, ((2 * degree + 1) * u * here - degree * before) / (degree + 1)];
  }
  return sum;
};

/** cos and sin amplitudes P, Q of Hankel's expansion: J = √(2/πx)(P cos χ − Q sin χ), Y = √(2/πx)(P sin χ + Q cos χ). */
export interface HankelAmplitudes {
  p: number;
  q: number;
}

const TERMS = 24;

const coefficients = (order: 0 | 1): Float64Array => {
  const mu = 4 * order * order;
  const c = new Float64Array(TERMS);
  c[0] = 1;
  for (let k = 1; k < TERMS; k++) c[k] = (c[k - 1]! * (mu - (2 * k - 1) ** 2)) / (8 * k);
  return c;
};
const BY_ORDER = [coefficients(0), coefficients(1)] as const;

/**
 * Hankel's large-argument amplitudes for order 0 or 1, written into `out`; χ = x − (order/2 + 1/4) π.
 *
 * Holds for x >= 24: the last of the 24 terms is then below 1e-17.
 * Source: DLMF 10.17.3 and 10.17.4; Abramowitz & Stegun 9.2.5 to 9.2.10.
 */
export const hankelAmplitudesInto = (out: HankelAmplitudes, order: 0 | 1, x: number): void => {
  const c = BY_ORDER[order];
  const z = -1 / (x * x);
  let p = 0;
  let q = 0;
  for (let k = TERMS - 2; k >= 0; k -= 2) {
    p = p * z + c[k]!;
    q = q * z + c[k + 1]!;
  }
  out.p = p;
  out.q = q / x;
};

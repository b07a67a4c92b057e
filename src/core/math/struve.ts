import { besselSequence } from './besselSequence.ts';
import { type HankelAmplitudes, hankelAmplitudesInto } from './hankelAmplitudes.ts';

const ASYMPTOTIC_START = 40;
const amplitudes: HankelAmplitudes = { p: 0, q: 0 };

/** Y0 or Y1 for x >= 40 by Hankel's expansion. */
const besselYLarge = (order: 0 | 1, x: number): number => {
  hankelAmplitudesInto(amplitudes, order, x);
  const { p, q } = amplitudes;
  const s = Math.sin(x);
  const c = Math.cos(x);
  const scale = Math.sqrt(1 / (Math.PI * x));
  return order === 0 ? scale * (p * (s - c) + q * (c + s)) : scale * (q * (s - c) - p * (s + c));
};

/** Power series below x = 2, where the sums over J lose relative accuracy: first term 2 (x/2)^(ν+1)/(√π Γ(ν+3/2)) ... */
const struveSeries = (order: 0 | 1, x: number): number => {
  const q = (x * x) / 4;
  let term = order === 0 ? (2 * x) / Math.PI : (2 * x * x) / (3 * Math.PI);
  let sum = 0;
  for (let k = 0; k < 20; k++) {
    sum += term;
    term *= -q / ((k + 1.5) * (k + 1.5 + order));
  }
  return sum;
};

/**
 * Struve function H0 of any real x (odd in x). Absolute error below 3e-15.
 *
 * Power series up to 2 (DLMF 11.2.1), (4/π) Σ J_{2k+1}/(2k+1) up to 40 (DLMF 11.4.19), Y0 plus 11.6.1 above.
 *
 * Example: struveH0(3) = 0.574306149...
 */
export const struveH0 = (x: number): number => {
  if (x < 0) return -struveH0(-x);
  if (x < 2) return struveSeries(0, x);
  if (x < ASYMPTOTIC_START) {
    const j = besselSequence(x);
    let sum = 0;
    for (let n = j.length - 1 - (j.length % 2); n >= 1; n -= 2) sum += j[n]! / n;
    return (4 / Math.PI) * sum;
  }
  let term = 2 / (Math.PI * x);
  let sum = 0;
  for (let k = 1; k <= 16; k++) {
    sum += term;
    term *= -((2 * k - 1) ** 2) / (x * x);
  }
  return besselYLarge(0, x) + sum;
};

/**
 * Struve function H1 of any real x (even in x). Absolute error below 3e-15; relative below 1e-14 for small x.
 *
 * Power series up to 2 (DLMF 11.2.1), (2/π)(1 − J0) + (4/π) Σ J_{2k}/(4k² − 1) up to 40 (DLMF 11.4.20), Y1 plus 11.6.1 above.
 *
 * Example: struveH1(2) = 0.6467637282835622
 */
export const struveH1 = (x: number): number => {
  if (x < 0) return struveH1(-x);
  if (x < 2) return struveSeries(1, x);
  if (x < ASYMPTOTIC_START) {
    const j = besselSequence(x);
    let sum = 0;
    for (let n = j.length - 1 - ((j.length - 1) % 2); n >= 2; n -= 2) sum += j[n]! / (n * n - 1);
    return (2 / Math.PI) * (1 - j[0]! + 2 * sum);
  }
  let term = 2 / Math.PI;
  let sum = 0;
  for (let k = 0; k < 16; k++) {
    sum += term;
    term *= -((2 * k + 1) * (2 * k - 1)) / (x * x);
  }
  return besselYLarge(1, x) + sum;
};

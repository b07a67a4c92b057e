import { besselSequence } from './besselSequence.ts';
import { fitChebyshevInto, sumChebyshev } from './chebyshev.ts';
import { type HankelAmplitudes, hankelAmplitudesInto } from './hankelAmplitudes.ts';

const SERIES_END = 4;
const PIECE = 4;
const ASYMPTOTIC_START = 24;
const PIECES = (ASYMPTOTIC_START - SERIES_END) / PIECE;
const PIECE_TERMS = 18;
const SERIES_TERMS = 18;

const seriesCoefficients = (order: 0 | 1): Float64Array => {
  const c = new Float64Array(SERIES_TERMS);
  c[0] = order === 0 ? 1 : 0.5;
  for (let k = 1; k < SERIES_TERMS; k++) c[k] = -c[k - 1]! / (4 * k * (k + order));
  return c;
};
const SERIES = [seriesCoefficients(0), seriesCoefficients(1)] as const;

const tables: (Float64Array | null)[] = [null, null];

// Made once, from the recurrence, at the first argument that needs it.
const tableOf = (order: 0 | 1): Float64Array => {
  const made = tables[order];
  if (made) return made;
  const table = new Float64Array(PIECES * PIECE_TERMS);
  for (let i = 0; i < PIECES; i++) {
    const from = SERIES_END + i * PIECE;
    const target = table.subarray(i * PIECE_TERMS, (i + 1) * PIECE_TERMS);
    fitChebyshevInto(target, (x) => besselSequence(x)[order]!, from, from + PIECE);
  }
  tables[order] = table;
  return table;
};

const amplitudes: HankelAmplitudes = { p: 0, q: 0 };

const besselAbs = (order: 0 | 1, x: number): number => {
  if (x < SERIES_END) {
    const c = SERIES[order];
    const q = x * x;
    let sum = c[SERIES_TERMS - 1]!;
    for (let k = SERIES_TERMS - 2; k >= 0; k--) sum = sum * q + c[k]!;
    return order === 0 ? sum : sum * x;
  }
  if (x < ASYMPTOTIC_START) {
    const piece = Math.floor((x - SERIES_END) / PIECE);
    const middle = SERIES_END + (piece + 0.5) * PIECE;
    return sumChebyshev(tableOf(order), piece * PIECE_TERMS, PIECE_TERMS, (x - middle) / (PIECE / 2));
  }
  hankelAmplitudesInto(amplitudes, order, x);
  const { p, q } = amplitudes;
  // cos and sin of x − π/4 (order 0) and x − 3π/4 (order 1) without losing digits in the difference.
  const s = Math.sin(x);
  const c = Math.cos(x);
  const scale = Math.sqrt(1 / (Math.PI * x));
  return order === 0 ? scale * (p * (c + s) - q * (s - c)) : scale * (p * (s - c) + q * (s + c));
};

/**
 * Bessel function of the first kind, order 0, any real x.
 *
 * Absolute error below 2e-15 for |x| <= 1000, beyond that the rounding of x itself rules.
 * Method: power series below 4, Chebyshev pieces up to 24, Hankel's expansion above (DLMF 10.2.2, 10.17.3).
 *
 * Example: besselJ0(1) = 0.765197686557967
 */
export const besselJ0 = (x: number): number => besselAbs(0, Math.abs(x));

/**
 * Bessel function of the first kind, order 1, any real x; odd in x.
 *
 * Absolute error below 2e-15 for |x| <= 1000, relative below 1e-15 for |x| < 2 (so that 2 J1(x)/x is safe at small x).
 * Method and sources as `besselJ0`.
 *
 * Example: besselJ1(2) = 0.576724807756873
 */
export const besselJ1 = (x: number): number => (x < 0 ? -besselAbs(1, -x) : besselAbs(1, x));

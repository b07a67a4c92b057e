import { fourierInPlace } from './fourier.ts';

/** Magnitudes below this share of the greatest are taken as this: a perfect null has no logarithm. */
const FLOOR = 1e-8;

/**
 * Cepstrum of the minimum-phase system that has the magnitude of the filter `taps`: ln H(w) = Σ c_n exp(-jwn), n ≥ 0.
 *
 * `size` is the transform's length, a power of two; what the cepstrum has beyond size/2 folds back (zeros at radius r fold
 * by r^(size/2)). Taps all zero throw. Returns size/2 + 1 values.
 * Source: A. V. Oppenheim and R. W. Schafer, Discrete-Time Signal Processing, chapter 13 (from memory); J. O. Smith, Spectral
 * Audio Signal Processing, minimum-phase filter design.
 * Example: taps [1, -0.6] and [-0.6, 1] both give 0, -0.6, -0.18, -0.072, ...
 */
export function minimumPhaseCepstrum(taps: readonly number[], size: number): Float64Array {
  if (taps.length > size || taps.every((tap) => tap === 0)) throw new RangeError('No filter to make minimum phase.');
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  re.set(taps);
  fourierInPlace(re, im);
  const magnitudes = re.map((x, i) => Math.hypot(x, im[i]!));
  const floor = FLOOR * magnitudes.reduce((greatest, m) => Math.max(greatest, m), 0);
  im.fill(0);
  re.set(magnitudes.map((m) => Math.log(Math.max(m, floor))));
  fourierInPlace(re, im);
  // The spectrum is real and even, so forward and inverse transform are alike; the part before time 0 is folded over.
  return re.subarray(0, size / 2 + 1).map((c, n) => (c / size) * (n === 0 || n === size / 2 ? 1 : 2));
}

/** Magnitude, and phase in radians, of a cepstrum at `omega` radians per sample. */
export function cepstrumResponse(
  cepstrum: Float64Array,
  omega: number,
): { readonly magnitude: number; readonly phaseRad: number } {
  let lnMagnitude = 0;
  let phaseRad = 0;
  for (let n = 0; n < cepstrum.length; n++) {
    lnMagnitude += cepstrum[n]! * Math.cos(omega * n);
    phaseRad -= cepstrum[n]! * Math.sin(omega * n);
  }
  return { magnitude: Math.exp(lnMagnitude), phaseRad };
}

/**
 * The minimum-phase filter with the magnitude of `taps`, as many taps long. Error and `size` as for the cepstrum.
 *
 * Example: `minimumPhaseTaps([1, -2.5, 1], 1024)` is [2, -2, 0.5].
 */
export function minimumPhaseTaps(taps: readonly number[], size: number): Float64Array {
  const cepstrum = minimumPhaseCepstrum(taps, size);
  // exp of a power series: n h_n = Σ m c_m h_(n-m), m from 1 to n.
  const out = new Float64Array(taps.length);
  out[0] = Math.exp(cepstrum[0]!);
  for (let n = 1; n < out.length; n++) {
    let sum = 0;
    for (let m = 1; m <= n; m++) sum += m * (cepstrum[m] ?? 0) * out[n - m]!;
    out[n] = sum / n;
  }
  return out;
}

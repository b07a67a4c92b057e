/**
 * Levels in dB smoothed over 1/`fraction` octave: the mean of |H|² in a window that is centred and even in ln f.
 *
 * Levels are straight over ln f between points, so |H|² is exponential there and its integral exact. Towards the ends the
 * window narrows evenly on both sides, so that a slope is not bent; the end points stay as they are. On a slope the result
 * lies above the curve by `smoothingBiasDb`. Smooth for looking, after minimum phase and joining, never before.
 *
 * `frequenciesHz` ascending, above 0, as long as `levelsDb` (throws otherwise).
 * Source: P. D. Hatziantoniou and J. N. Mourjopoulos, J. Audio Eng. Soc. 48 (2000) 259 (smoothing of power over fractional octaves).
 * Example: `smoothPower(frequenciesHz, levelsDb, 3)` is third-octave smoothing.
 */
export function smoothPower(
  frequenciesHz: ArrayLike<number>,
  levelsDb: ArrayLike<number>,
  fraction: number,
): Float64Array {
  const n = frequenciesHz.length;
  if (levelsDb.length !== n || !(fraction > 0)) throw new RangeError('Smoothing takes equally long lists.');
  const x = Float64Array.from(frequenciesHz, Math.log);
  const power = Float64Array.from(levelsDb, (db) => db * NEPER_OF_POWER);
  const halfWindow = Math.LN2 / (2 * fraction);
  const smoothed = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const half = Math.min(halfWindow, x[i]! - x[0]!, x[n - 1]! - x[i]!);
    if (half <= 0) {
      smoothed[i] = levelsDb[i]!;
      continue;
    }
    // Relative to the level in the middle, so that no square overflows.
    const reference = power[i]!;
    let sum = 0;
    for (let j = i; j > 0 && x[j]! > x[i]! - half; j--) sum += piece(x, power, j - 1, x[i]! - half, x[i]!, reference);
    for (let j = i; j < n - 1 && x[j]! < x[i]! + half; j++) sum += piece(x, power, j, x[i]!, x[i]! + half, reference);
    smoothed[i] = (reference + Math.log(sum / (2 * half))) / NEPER_OF_POWER;
  }
  return smoothed;
}

const NEPER_OF_POWER = Math.LN10 / 10;

/** Integral of exp(level - reference) over the part of piece j that lies between `from` and `to`. */
function piece(x: Float64Array, y: Float64Array, j: number, from: number, to: number, reference: number): number {
  const left = Math.max(from, x[j]!);
  const right = Math.min(to, x[j + 1]!);
  if (right <= left) return 0;
  const slope = (y[j + 1]! - y[j]!) / (x[j + 1]! - x[j]!);
  const start = Math.exp(y[j]! + slope * (left - x[j]!) - reference);
  const rise = slope * (right - left);
  return start * (right - left) * (Math.abs(rise) < 1e-12 ? 1 : Math.expm1(rise) / rise);
}

/**
 * What smoothing over 1/`fraction` octave adds in dB where the level falls or rises by `dbPerOctave`: 10 lg(sinh(pa)/(pa)),
 * p the slope in 3.01 dB to the octave, a = ln 2/(2·fraction).
 *
 * Derived from the integral; checked against it in the tests.
 * Example: `smoothingBiasDb(12.0412, 3)` is 0.1535.
 */
export function smoothingBiasDb(dbPerOctave: number, fraction: number): number {
  const pa = (dbPerOctave / (10 * Math.log10(2))) * (Math.LN2 / (2 * fraction));
  return pa === 0 ? 0 : 10 * Math.log10(Math.sinh(pa) / pa);
}

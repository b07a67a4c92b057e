/**
 * Takes the jumps of 2π out of a list of phases in radians, so that neighbours differ by π at most; the first stays.
 *
 * Holds where the true phase turns by less than half a turn from point to point: take a known delay out first.
 * Example: `unwrapPhase([3, -3])` is [3, 3.283].
 */
export function unwrapPhase(phasesRad: ArrayLike<number>): Float64Array {
  const unwrapped = Float64Array.from(phasesRad);
  for (let i = 1; i < unwrapped.length; i++) {
    const step = unwrapped[i]! - unwrapped[i - 1]!;
    unwrapped[i] = unwrapped[i]! - 2 * Math.PI * Math.round(step / (2 * Math.PI));
  }
  return unwrapped;
}

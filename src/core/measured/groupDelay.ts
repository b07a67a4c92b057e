/**
 * Group delay in seconds, -dφ/dω, from unwrapped phase in radians at ascending frequencies in Hz (3 points or more, throws
 * otherwise).
 *
 * Slope of the parabola through three neighbours, one-sided at the ends: exact for quadratic phase, error of second order
 * in the step. Noise in the phase is enlarged by 1/step.
 * Example: a pure delay of 1 ms gives 1e-3 everywhere.
 */
export function groupDelay(frequenciesHz: ArrayLike<number>, phasesRad: ArrayLike<number>): Float64Array {
  const n = frequenciesHz.length;
  if (n < 3 || phasesRad.length !== n) throw new RangeError('Group delay takes two lists of 3 or more points.');
  const delays = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const middle = Math.min(Math.max(i, 1), n - 2);
    const [f0, f1, f2] = [frequenciesHz[middle - 1]!, frequenciesHz[middle]!, frequenciesHz[middle + 1]!];
    const first = (phasesRad[middle]! - phasesRad[middle - 1]!) / (f1 - f0);
    const second = (phasesRad[middle + 1]! - phasesRad[middle]!) / (f2 - f1);
    const bend = (second - first) / (f2 - f0);
    delays[i] = -(first + bend * (2 * frequenciesHz[i]! - f0 - f1)) / (2 * Math.PI);
  }
  return delays;
}

/** Beyond this the powers leave the range of a double; the rest is below 5e-6. */
const MOST_TERMS = 80;

/**
 * Mean of 1/R between the points of two equal circles side by side in one plane, 1/m (radius, distance of centres d >= 2a; m).
 *
 * Each mean over a circle turns f into Σ (a²/4)^n/(n!(n+1)!) ∇^2n f, and ∇² R^−s = s² R^(−s−2) in the plane; applied to both circles
 * this is a power series in (a/d)², 1/d (1 + a²/(4 d²) + ...). Relative error 1e-9 from d = 2.5 a on, 5e-6
 * where the circles touch.
 * Throws a RangeError when they overlap. Source: derived here (Green's function of the half space).
 *
 * Example: meanInverseDistancePerM(0.035, 0.11) = 9.347
 */
export const meanInverseDistancePerM = (radiusM: number, distanceM: number): number => {
  if (!(distanceM >= 2 * radiusM * (1 - 1e-12))) throw new RangeError('the two mouths overlap');
  const ratio = (radiusM / distanceM) ** 2;
  const single: number[] = [1];
  let sum = 1;
  let odds = 1;
  for (let n = 1; n < MOST_TERMS; n++) {
    single[n] = single[n - 1]! / (n * (n + 1));
    // (2n − 1)!!² / 4^n (a/d)^2n, kept together: apart, both overflow.
    odds *= ((2 * n - 1) ** 2 / 4) * ratio;
    let pairs = 0;
    for (let m = 0; m <= n; m++) pairs += single[m]! * single[n - m]!;
    const term = odds * pairs;
    sum += term;
    if (term < 1e-12 * sum) break;
  }
  return sum / distanceM;
};

/**
 * Natural cubic spline through (x_i, y_i): second derivative zero at both ends, straight lines beyond them.
 *
 * x ascending, at least two points. Throws a RangeError otherwise. Error O(h⁴) inside, O(h²) near the ends of a curve that bends
 * there. For a curve over frequency give x = ln f. Source: Numerical Recipes, section 3.3 (method; from memory).
 *
 * Example: naturalCubicSpline([0, 1, 2], [0, 1, 0])(1) = 1
 */
export const naturalCubicSpline = (xs: ArrayLike<number>, ys: ArrayLike<number>): ((x: number) => number) => {
  const n = xs.length;
  if (n < 2 || ys.length !== n) throw new RangeError('a spline needs at least two points and as many values');
  for (let i = 1; i < n; i++) if (!(xs[i]! > xs[i - 1]!)) throw new RangeError(`x does not ascend at point ${i}`);
  const curvature = new Float64Array(n);
  const work = new Float64Array(n);
  for (let i = 1; i < n - 1; i++) {
    const part = (xs[i]! - xs[i - 1]!) / (xs[i + 1]! - xs[i - 1]!);
    const pivot = part * curvature[i - 1]! + 2;
    curvature[i] = (part - 1) / pivot;
    const bend = (ys[i + 1]! - ys[i]!) / (xs[i + 1]! - xs[i]!) - (ys[i]! - ys[i - 1]!) / (xs[i]! - xs[i - 1]!);
    work[i] = ((6 * bend) / (xs[i + 1]! - xs[i - 1]!) - part * work[i - 1]!) / pivot;
  }
  curvature[n - 1] = 0;
  for (let i = n - 2; i >= 0; i--) curvature[i] = curvature[i]! * curvature[i + 1]! + work[i]!;
  const slope = (i: number, atEnd: boolean): number => {
    const h = xs[i + 1]! - xs[i]!;
    const bend = atEnd ? curvature[i]! + 2 * curvature[i + 1]! : -2 * curvature[i]! - curvature[i + 1]!;
    return (ys[i + 1]! - ys[i]!) / h + (h * bend) / 6;
  };
  const firstSlope = slope(0, false);
  const lastSlope = slope(n - 2, true);
  return (x) => {
    if (x <= xs[0]!) return ys[0]! + firstSlope * (x - xs[0]!);
    if (x >= xs[n - 1]!) return ys[n - 1]! + lastSlope * (x - xs[n - 1]!);
    let low = 0;
    let high = n - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (xs[middle]! > x) high = middle;
      else low = middle;
    }
    const h = xs[high]! - xs[low]!;
    const a = (xs[high]! - x) / h;
    const b = 1 - a;
    return (
      a * ys[low]! + b * ys[high]! + (((a ** 3 - a) * curvature[low]! + (b ** 3 - b) * curvature[high]!) * h * h) / 6
    );
  };
};

/**
 * Simple real roots of a polynomial between 0 and `to`, ascending (coefficients from the constant upwards).
 *
 * The roots of the derivative cut the interval where the polynomial is monotone; a sign change there is closed in by Newton steps that
 * fall back on bisection. For degrees up to about 8. A root of even multiplicity, which only touches zero, may be missed; relative error
 * near 1e-12 where roots are apart. Derived (Rolle's theorem).
 *
 * Example: positiveRoots([2, -3, 1], 10) = [1, 2]
 */
export const positiveRoots = (coefficients: readonly number[], to: number): number[] => {
  let degree = coefficients.length - 1;
  while (degree > 0 && coefficients[degree] === 0) degree--;
  if (degree < 1) return [];
  if (degree === 1) {
    const root = -coefficients[0]! / coefficients[1]!;
    return root > 0 && root < to ? [root] : [];
  }
  if (degree === 2) return quadratic(coefficients[2]!, coefficients[1]!, coefficients[0]!, to);
  const slope: number[] = [];
  for (let k = 1; k <= degree; k++) slope.push(k * coefficients[k]!);
  const ends = positiveRoots(slope, to);
  ends.push(to);
  const roots: number[] = [];
  let from = 0;
  let atFrom = coefficients[0]!;
  for (const end of ends) {
    const atEnd = valueAt(coefficients, degree, end);
    if ((atFrom < 0 && atEnd > 0) || (atFrom > 0 && atEnd < 0)) {
      roots.push(closeIn(coefficients, slope, degree, from, end, atFrom < 0));
    } else if (atEnd === 0 && end < to) {
      roots.push(end);
    }
    from = end;
    atFrom = atEnd;
  }
  return roots;
};

const valueAt = (coefficients: readonly number[], degree: number, x: number): number => {
  let sum = coefficients[degree]!;
  for (let k = degree - 1; k >= 0; k--) sum = sum * x + coefficients[k]!;
  return sum;
};

const quadratic = (a: number, b: number, c: number, to: number): number[] => {
  const square = b * b - 4 * a * c;
  if (!(square > 0)) return [];
  // The form without cancellation: one root as q/a, the other as c/q.
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(square)) / 2;
  const roots = q === 0 ? [] : [q / a, c / q];
  return roots.filter((root) => root > 0 && root < to).sort((one, other) => one - other);
};

const closeIn = (
  coefficients: readonly number[],
  slope: readonly number[],
  degree: number,
  from: number,
  to: number,
  rises: boolean,
): number => {
  let low = from;
  let high = to;
  let x = (low + high) / 2;
  for (let step = 0; step < 200; step++) {
    const value = valueAt(coefficients, degree, x);
    if (value === 0) return x;
    if (value < 0 === rises) low = x;
    else high = x;
    const next = x - value / valueAt(slope, degree - 1, x);
    const inside = next > low && next < high;
    const moved = inside ? next : (low + high) / 2;
    if (Math.abs(moved - x) <= 1e-13 * Math.abs(moved) || moved === low || moved === high) return moved;
    x = moved;
  }
  return x;
};

import { type Complex, divide, multiply, scale } from '../../math/complex.ts';

/** A rational function of s, coefficients from the constant upwards; s in rad/s, or relative to a corner at 1. */
export interface TransferFunction {
  readonly numerator: readonly number[];
  readonly denominator: readonly number[];
}

/** rad/s of a frequency. */
export const angularFrequency = (hz: number): number => 2 * Math.PI * hz;

/** Value of a real polynomial, coefficients from the constant upwards. */
export function polynomialAt(coefficients: readonly number[], s: Complex): Complex {
  let value: Complex = { re: 0, im: 0 };
  for (let k = coefficients.length - 1; k >= 0; k--) {
    const product = multiply(value, s);
    value = { re: product.re + coefficients[k]!, im: product.im };
  }
  return value;
}

/** Coefficients of a product. */
export function polynomialProduct(a: readonly number[], b: readonly number[]): number[] {
  const product = new Array<number>(a.length + b.length - 1).fill(0);
  a.forEach((x, i) => {
    b.forEach((y, k) => {
      product[i + k]! += x * y;
    });
  });
  return product;
}

/** Coefficients of the derivative. */
export const polynomialDerivative = (coefficients: readonly number[]): number[] =>
  coefficients.slice(1).map((c, k) => c * (k + 1));

const polynomialSum = (a: readonly number[], b: readonly number[]): number[] =>
  Array.from({ length: Math.max(a.length, b.length) }, (_, k) => (a[k] ?? 0) + (b[k] ?? 0));

/**
 * Response at s = jω.
 * @example respond({ numerator: [1], denominator: [1, 1] }, 1) // 0.5 - 0.5j
 */
export const respond = ({ numerator, denominator }: TransferFunction, omega: number): Complex => {
  const s = { re: 0, im: omega };
  return divide(polynomialAt(numerator, s), polynomialAt(denominator, s));
};

/** The same function with its corner at 1 moved to `omega` rad/s: s becomes s/ω. */
export const movedTo = ({ numerator, denominator }: TransferFunction, omega: number): TransferFunction => {
  const moved = (coefficients: readonly number[]): number[] => coefficients.map((c, k) => c / omega ** k);
  return { numerator: moved(numerator), denominator: moved(denominator) };
};

/** a + factor × b: a coincident sum, with factor -1 for reversed polarity. */
export function sumOf(a: TransferFunction, b: TransferFunction, factor = 1): TransferFunction {
  const scaled = b.numerator.map((c) => factor * c);
  const isShared =
    a.denominator.length === b.denominator.length && a.denominator.every((c, k) => c === b.denominator[k]);
  if (isShared) return { numerator: polynomialSum(a.numerator, scaled), denominator: a.denominator };
  return {
    numerator: polynomialSum(polynomialProduct(a.numerator, b.denominator), polynomialProduct(scaled, a.denominator)),
    denominator: polynomialProduct(a.denominator, b.denominator),
  };
}

/** One behind the other, neither loading the other. */
export const cascadeOf = (a: TransferFunction, b: TransferFunction): TransferFunction => ({
  numerator: polynomialProduct(a.numerator, b.numerator),
  denominator: polynomialProduct(a.denominator, b.denominator),
});

/** p'/p of a polynomial at s = jω: how its argument turns. */
export const logarithmicDerivative = (coefficients: readonly number[], omega: number): Complex => {
  const s = { re: 0, im: omega };
  return divide(polynomialAt(polynomialDerivative(coefficients), s), polynomialAt(coefficients, s));
};

/** d/ds of p'/p at s = jω. */
export const logarithmicCurvature = (coefficients: readonly number[], omega: number): Complex => {
  const s = { re: 0, im: omega };
  const first = polynomialDerivative(coefficients);
  const ratio = logarithmicDerivative(coefficients, omega);
  const second = divide(polynomialAt(polynomialDerivative(first), s), polynomialAt(coefficients, s));
  const squared = scale(multiply(ratio, ratio), -1);
  return { re: second.re + squared.re, im: second.im + squared.im };
};

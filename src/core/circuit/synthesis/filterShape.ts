import { type BesselNormalisation, besselPolynomial } from './besselPolynomial.ts';
import { butterworthPolynomial } from './butterworthPolynomial.ts';
import { movedTo, polynomialProduct, type TransferFunction } from './transferFunction.ts';

/** A family of filters and its order: what the literature calls an alignment of a crossover's half. */
export type FilterShape =
  | { readonly family: 'butterworth'; readonly order: number }
  /** Even orders: the square of a Butterworth of half the order, 6.02 dB down at the corner. */
  | { readonly family: 'linkwitz-riley'; readonly order: number }
  | { readonly family: 'bessel'; readonly order: number; readonly normalisation: BesselNormalisation };

/**
 * Denominator of the low-pass with its corner at 1, coefficients from the constant (1) upwards; 1 / D is the low-pass.
 * Throws for orders that a family does not have.
 * @example prototypePolynomial({ family: 'butterworth', order: 2 }) // 1, √2, 1
 */
export function prototypePolynomial(shape: FilterShape): number[] {
  switch (shape.family) {
    case 'butterworth':
      return butterworthPolynomial(shape.order);
    case 'linkwitz-riley': {
      if (shape.order % 2 !== 0) throw new RangeError('A Linkwitz-Riley filter has an even order.');
      const half = butterworthPolynomial(shape.order / 2);
      return polynomialProduct(half, half);
    }
    case 'bessel':
      return besselPolynomial(shape.order, shape.normalisation);
  }
}

/** The low-pass 1 / D(s) with its corner at 1. */
export const lowPassPrototype = (shape: FilterShape): TransferFunction => ({
  numerator: [1],
  denominator: prototypePolynomial(shape),
});

/** The high-pass with its corner at 1: s becomes 1/s in the low-pass. */
export function highPassPrototype(shape: FilterShape): TransferFunction {
  const polynomial = prototypePolynomial(shape);
  return {
    numerator: polynomial.map((_, k) => (k === polynomial.length - 1 ? 1 : 0)),
    denominator: polynomial.toReversed(),
  };
}

/** The low-pass with its corner at `cornerHz`. */
export const lowPassTransfer = (shape: FilterShape, cornerHz: number): TransferFunction =>
  movedTo(lowPassPrototype(shape), 2 * Math.PI * cornerHz);

/** The high-pass with its corner at `cornerHz`. */
export const highPassTransfer = (shape: FilterShape, cornerHz: number): TransferFunction =>
  movedTo(highPassPrototype(shape), 2 * Math.PI * cornerHz);

/**
 * The band-pass between two corners: s becomes (s² + ωl ωh) / (s (ωh - ωl)), so that both corners are as far down as the
 * low-pass is at its own, and each flank falls with the shape's order.
 */
export function bandPassTransfer(shape: FilterShape, lowHz: number, highHz: number): TransferFunction {
  const polynomial = prototypePolynomial(shape);
  const order = polynomial.length - 1;
  const [low, high] = [2 * Math.PI * lowHz, 2 * Math.PI * highHz];
  const width = high - low;
  let denominator: number[] = [];
  let power = [1];
  polynomial.forEach((c, k) => {
    // c (s² + ωl ωh)^k (s (ωh - ωl))^(order - k)
    const shift = order - k;
    const term = [...new Array<number>(shift).fill(0), ...power.map((x) => c * x * width ** shift)];
    denominator = Array.from(
      { length: Math.max(denominator.length, term.length) },
      (_, i) => (denominator[i] ?? 0) + (term[i] ?? 0),
    );
    power = polynomialProduct(power, [low * high, 0, 1]);
  });
  return { numerator: [...new Array<number>(order).fill(0), width ** order], denominator };
}

import { add, type Complex, divide, multiply, subtract } from '../../math/complex.ts';

/**
 * A duct between its near and its far end at one frequency: p1 = A p2 + B U2, U1 = C p2 + D U2; p in Pa, U in m³/s, U1 flowing in at
 * the near end, U2 out at the far end. A and D are plain numbers, B Pa·s/m³, C m³/(Pa·s). Without sources AD − BC = 1.
 */
export interface TwoPort {
  readonly a: Complex;
  readonly b: Complex;
  readonly c: Complex;
  readonly d: Complex;
}

/** Two-ports one after the other, the nearest first: the product of their matrices. */
export const cascadeTwoPorts = (first: TwoPort, ...rest: readonly TwoPort[]): TwoPort =>
  rest.reduce(
    (left, right) => ({
      a: add(multiply(left.a, right.a), multiply(left.b, right.c)),
      b: add(multiply(left.a, right.b), multiply(left.b, right.d)),
      c: add(multiply(left.c, right.a), multiply(left.d, right.c)),
      d: add(multiply(left.c, right.b), multiply(left.d, right.d)),
    }),
    first,
  );

/** The same duct looked at from its far end. */
export const reversedTwoPort = ({ a, b, c, d }: TwoPort): TwoPort => ({ a: d, b, c, d: a });

/** Impedance at the near end with a load at the far one: (A z + B)/(C z + D), Pa·s/m³. */
export const loadedInputImpedance = ({ a, b, c, d }: TwoPort, load: Complex): Complex =>
  divide(add(multiply(a, load), b), add(multiply(c, load), d));

/** Impedance at the near end with the far end shut by a hard wall: A/C. */
export const closedInputImpedance = ({ a, c }: TwoPort): Complex => divide(a, c);

/** Impedance at the near end with no pressure at the far one: B/D. */
export const openInputImpedance = ({ b, d }: TwoPort): Complex => divide(b, d);

/** AD − BC: 1 for everything reciprocal, whatever its losses. */
export const twoPortDeterminant = ({ a, b, c, d }: TwoPort): Complex => subtract(multiply(a, d), multiply(b, c));

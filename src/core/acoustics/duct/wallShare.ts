import { add, type Complex, complex, divide, multiply, scale, subtract } from '../../math/complex.ts';
import { hyperbolicTangent } from '../../math/hyperbolic.ts';

/** Beyond this |x| Hankel's expansion holds to rounding: its neglected wave is e^(−√2 |x|), 1e-18. */
const ASYMPTOTIC_START = 30;
const ASYMPTOTIC_TERMS = 14;
const DIAGONAL = Math.SQRT1_2;

/** Σ j^k a_k(ν)/x^k of Hankel's expansion (DLMF 10.17.5) on the ray x = r e^(−jπ/4). */
const hankelSum = (order: 0 | 1, overX: Complex): Complex => {
  const fourNuSquare = 4 * order;
  let term = complex(1);
  let sum = complex(1);
  for (let k = 1; k <= ASYMPTOTIC_TERMS; k++) {
    const factor = (fourNuSquare - (2 * k - 1) ** 2) / (8 * k);
    term = multiply(term, multiply(complex(0, factor), overX));
    sum = add(sum, term);
    if (Math.abs(term.re) + Math.abs(term.im) < 1e-17) break;
  }
  return sum;
};

/**
 * J1(x)/J0(x) on the ray x = r e^(−jπ/4) that friction and heat in a round tube need (r > 0); relative error below 1e-13.
 *
 * Continued fraction x/(2 − x²/(4 − x²/(6 − ...))) from the inside out (DLMF 10.10.1), beyond r = 30 the ratio of two Hankel
 * expansions; neither overflows.
 */
export const besselRatioOnDiagonal = (r: number): Complex => {
  const x = complex(r * DIAGONAL, -r * DIAGONAL);
  if (r > ASYMPTOTIC_START) {
    const overX = divide(complex(1), x);
    return multiply(complex(0, -1), divide(hankelSum(1, overX), hankelSum(0, overX)));
  }
  const square = complex(0, -r * r);
  const last = Math.ceil(r) + 20;
  let denominator = complex(2 * last);
  for (let n = last - 1; n >= 1; n--) denominator = subtract(complex(2 * n), divide(square, denominator));
  return divide(x, denominator);
};

/**
 * Share F of a round section that the wall holds back, F = 2 J1(x)/(x J0(x)), x = r e^(−jπ/4), r = a √(ω/ν) (radius a).
 *
 * 1 in a tube far narrower than the layer, (1 − j) d/a in one far wider (d: `viscousDepthM`). For heat give r √Pr.
 * Source: M. R. Stinson, "The propagation of plane sound waves in narrow and wide circular tubes, and generalization to uniform
 * tubes of arbitrary cross-sectional shape", J. Acoust. Soc. Am. 89, 1991, 550.
 */
export const roundWallShare = (r: number): Complex =>
  scale(divide(besselRatioOnDiagonal(r), complex(r * DIAGONAL, -r * DIAGONAL)), 2);

/** The same between two plates, F = tanh(s)/s, s = r e^(jπ/4), r = (h/2) √(ω/ν) (gap h). Source as `roundWallShare`. */
export const slitWallShare = (r: number): Complex => {
  const s = complex(r * DIAGONAL, r * DIAGONAL);
  return divide(hyperbolicTangent(s), s);
};

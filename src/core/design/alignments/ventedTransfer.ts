import { type Complex, complex, divide } from '../../math/complex.ts';
import { polynomialRoots } from '../../math/polynomialRoots.ts';

/** A vented box in the terms of its alignment: h = fB/fs, α = Vas/V, QT of the driver, QL of the leak at fB (null: lossless). */
export interface VentedBox {
  readonly h: number;
  readonly alpha: number;
  readonly qt: number;
  readonly ql: number | null;
}

/** G(s) = s⁴/(s⁴ + a1 s³ + a2 s² + a3 s + 1), s in units of 2π √(fs fB). */
export interface VentedCoefficients {
  readonly a1: number;
  readonly a2: number;
  readonly a3: number;
}

/** 1/QL, 0 for a lossless box. */
export const lossOf = (ql: number | null): number => (ql === null ? 0 : 1 / ql);

/**
 * Coefficients of the vented box with leakage losses: total output of cone, port and leak over the pass band.
 *
 * a1 = 1/(√h QT) + √h/QL, a2 = (α + 1 + h²)/h + 1/(QL QT), a3 = √h/QT + 1/(√h QL). Assumes leakage only, no coil inductance.
 * Source: R. H. Small, "Vented-Box Loudspeaker Systems", J. Audio Eng. Soc. 21, 1973, equations 19 to 23 (from memory; checked against
 * the acoustic circuit).
 *
 * Example: ventedCoefficients({ h: 0.85, alpha: 1.8, qt: 0.42, ql: 10 }).a1 = 2.6747
 */
export const ventedCoefficients = ({ h, alpha, qt, ql }: VentedBox): VentedCoefficients => {
  const root = Math.sqrt(h);
  const loss = lossOf(ql);
  return {
    a1: 1 / (root * qt) + root * loss,
    a2: (alpha + 1 + h * h) / h + loss / qt,
    a3: root / qt + loss / root,
  };
};

/** G at a frequency in units of √(fs fB). */
export const ventedTransfer = ({ a1, a2, a3 }: VentedCoefficients, frequency: number): Complex => {
  const w = frequency;
  return divide(complex(w ** 4), complex(w ** 4 - a2 * w * w + 1, a3 * w - a1 * w ** 3));
};

/** G at a frequency in units of fs. */
export const ventedResponse = (box: VentedBox, frequencyOverFs: number): Complex =>
  ventedTransfer(ventedCoefficients(box), frequencyOverFs / Math.sqrt(box.h));

/**
 * The half-power frequency above which the response stays above −3.01 dB, in units of √(fs fB).
 *
 * Largest root of ω⁸ − (a1² − 2a2) ω⁶ − (a2² + 2 − 2a1a3) ω⁴ − (a3² − 2a2) ω² − 1 = 0, which always has one.
 */
export const ventedHalfPower = ({ a1, a2, a3 }: VentedCoefficients): number => {
  const roots = polynomialRoots([-1, 2 * a2 - a3 * a3, 2 * a1 * a3 - a2 * a2 - 2, 2 * a2 - a1 * a1, 1]);
  return Math.sqrt(Math.max(...roots.filter((root) => root.im === 0).map((root) => root.re)));
};

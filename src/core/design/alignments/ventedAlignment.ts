import { findRoot } from '../../math/findRoot.ts';
import {
  lossOf,
  type VentedBox,
  type VentedCoefficients,
  ventedCoefficients,
  ventedHalfPower,
} from './ventedTransfer.ts';

/** A vented box with its −3 dB point. */
export interface VentedAlignment extends VentedBox {
  readonly f3OverFs: number;
}

/** α that gives a box of known h, QT and QL a wanted a2. */
export const alphaFromA2 = (a2: number, h: number, qt: number, ql: number | null): number =>
  a2 * h - (h * lossOf(ql)) / qt - 1 - h * h;

export const withHalfPower = (box: VentedBox): VentedAlignment => ({
  ...box,
  f3OverFs: ventedHalfPower(ventedCoefficients(box)) * Math.sqrt(box.h),
});

/**
 * The box and driver Q that realise given coefficients with a given leak.
 *
 * Lossless: h = a3/a1, QT = 1/√(a1 a3). With a leak √h is the root of v⁴/QL − a1 v³ + a3 v − 1/QL = 0 that grows out of that one,
 * and 1/QT = √h a1 − h/QL. null where the leak is too strong for any: no such root, or no volume left (α not above 0).
 * Source: R. H. Small, "Vented-Box Loudspeaker Systems", 1973, part I (equations as `ventedCoefficients`, inverted here).
 */
export const boxFromCoefficients = ({ a1, a2, a3 }: VentedCoefficients, ql: number | null): VentedBox | null => {
  const loss = lossOf(ql);
  const v = rootOfH(a1, a3, loss);
  if (v === null) return null;
  const h = v * v;
  const qt = 1 / (v * a1 - h * loss);
  const alpha = alphaFromA2(a2, h, qt, ql);
  return qt > 0 && alpha > 0 ? { h, qt, ql, alpha } : null;
};

/** The same with its −3 dB point. */
export const ventedFromCoefficients = (coefficients: VentedCoefficients, ql: number | null): VentedAlignment | null => {
  const box = boxFromCoefficients(coefficients, ql);
  return box === null ? null : withHalfPower(box);
};

/** √h: a loss moves it away from √(a3/a1), and further from 1; searched in steps of 2 %, then by bisection and secants. */
const rootOfH = (a1: number, a3: number, loss: number): number | null => {
  const start = Math.sqrt(a3 / a1);
  const mismatch = (v: number): number => loss * v ** 4 - a1 * v ** 3 + a3 * v - loss;
  const atStart = mismatch(start);
  if (Math.abs(atStart) < 1e-13 * a1) return start;
  const stride = start < 1 ? 0.98 : 1.02;
  for (let near = start, step = 0; step < 40; step++) {
    const far = near * stride;
    if (atStart * mismatch(far) <= 0) return findRoot(mismatch, near, far, 1e-15).x;
    near = far;
  }
  return null;
};

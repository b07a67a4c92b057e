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
 * Lossless: h = a3/a1, QT = 1/√(a1 a3). With a leak √h is the root of v⁴/QL − a1 v³ + a3 v − 1/QL = 0 that lies near that, and
 * 1/QT = √h a1 − h/QL. Source: R. H. Small, "Vented-Box Loudspeaker Systems", 1973, part I (equations as `ventedCoefficients`, inverted
 * here).
 */
export const ventedFromCoefficients = ({ a1, a2, a3 }: VentedCoefficients, ql: number | null): VentedAlignment => {
  const loss = lossOf(ql);
  const start = Math.sqrt(a3 / a1);
  const mismatch = (v: number): number => loss * v ** 4 - a1 * v ** 3 + a3 * v - loss;
  const v = loss === 0 ? start : findRoot(mismatch, start / 2, start * 2, 1e-15).x;
  const h = v * v;
  const qt = 1 / (v * a1 - h * loss);
  return withHalfPower({ h, qt, ql, alpha: alphaFromA2(a2, h, qt, ql) });
};

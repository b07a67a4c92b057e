import type { Complex } from '../../math/complex.ts';
import { polynomialRoots } from '../../math/polynomialRoots.ts';
import { respond, type TransferFunction } from './transferFunction.ts';

/**
 * Phase over a list of angular frequencies, radians, continuous from ω = 0 on. It begins at 0 (at π for a negative gain at
 * direct current), plus π/2 for each zero and less π/2 for each pole at s = 0. The turns are counted from the roots, so
 * the list may be coarse; the value itself is the argument of the response. A zero on the axis itself turns by +π.
 * Throws for a function that is 0 everywhere.
 * @example unwrappedPhase(allPass, [0.5, 1, 2])
 */
export function unwrappedPhase(transfer: TransferFunction, omegas: readonly number[]): number[] {
  const top = rootsOf(transfer.numerator);
  const bottom = rootsOf(transfer.denominator);
  const gain = (transfer.numerator[top.atOrigin] ?? 0) / (transfer.denominator[bottom.atOrigin] ?? 1);
  const start = (gain < 0 ? Math.PI : 0) + ((top.atOrigin - bottom.atOrigin) * Math.PI) / 2;
  return omegas.map((omega) => {
    const estimate = start + turn(top.others, omega) - turn(bottom.others, omega);
    const { re, im } = respond(transfer, omega);
    if (re === 0 && im === 0) return estimate;
    const argument = Math.atan2(im, re);
    return argument + 2 * Math.PI * Math.round((estimate - argument) / (2 * Math.PI));
  });
}

function rootsOf(coefficients: readonly number[]): { readonly atOrigin: number; readonly others: readonly Complex[] } {
  const atOrigin = coefficients.findIndex((c) => c !== 0);
  if (atOrigin < 0) throw new RangeError('A function that is 0 everywhere has no phase.');
  const last = coefficients.findLastIndex((c) => c !== 0);
  return { atOrigin, others: polynomialRoots(coefficients.slice(atOrigin, last + 1)) };
}

/** By how much the argument of Π (jω - root) has turned since ω = 0. */
function turn(roots: readonly Complex[], omega: number): number {
  let sum = 0;
  for (const { re, im } of roots) {
    const angle = (w: number): number => Math.atan2(w - im, Math.abs(re));
    // Past a root on the right the vector turns the other way.
    sum += (re > 0 ? -1 : 1) * (angle(omega) - angle(0));
  }
  return sum;
}

import { type Problem, problem } from '../../messages/problem.ts';
import { prototypePolynomial } from './filterShape.ts';
import { notPositive } from './section.ts';

/** A filter before the amplifier. Its corner: 3.01 dB down for Butterworth, 6.02 dB for Linkwitz-Riley. */
export interface ActiveFilter {
  readonly kind: 'high-pass' | 'low-pass';
  readonly shape: 'butterworth' | 'linkwitz-riley';
  readonly order: number;
  readonly cornerHz: number;
}

const HIGHEST_ORDER = 4;

/**
 * What keeps an active filter from being one: orders are 1 to 4 for Butterworth, 2 and 4 for Linkwitz-Riley, a corner is above 0.
 * Problems: `circuit.filter-order`, `circuit.section-value`.
 */
export function activeFilterProblems({ shape, order, cornerHz }: ActiveFilter): Problem[] {
  const isOrder = Number.isInteger(order) && order >= 1 && order <= HIGHEST_ORDER;
  const lacksOrder = shape === 'linkwitz-riley' && order % 2 !== 0;
  const problems = notPositive({ cornerHz });
  if (isOrder && !lacksOrder) return problems;
  return [...problems, problem('circuit.filter-order', { kind: 'field', field: 'order' }, { family: shape, order })];
}

/**
 * Complex gain of an active filter over a sweep: writes real and imaginary parts for every angular frequency (rad/s) into the
 * caller's buffers. 1 in the pass band, ideal parts, no delay.
 *
 * Throws for an order that the shape does not have (see `activeFilterProblems`). The low-pass is 1/D(jx), x = ω/ωc; the
 * high-pass has s replaced by 1/s, 1/D(1/jx), which is the conjugate of the low-pass at 1/x. Source of D: see `prototypePolynomial`.
 * @example filterTransfer({ kind: 'high-pass', shape: 'butterworth', order: 2, cornerHz: 30 }, omegas, re, im)
 */
export function filterTransfer(
  { kind, shape, order, cornerHz }: ActiveFilter,
  omegas: Float64Array,
  outRe: Float64Array,
  outIm: Float64Array,
): void {
  const denominator = prototypePolynomial({ family: shape, order });
  const corner = 2 * Math.PI * cornerHz;
  const sign = kind === 'high-pass' ? 1 : -1;
  for (let f = 0; f < omegas.length; f++) {
    const x = kind === 'high-pass' ? corner / omegas[f]! : omegas[f]! / corner;
    let re = 0;
    let im = 0;
    for (let k = order; k >= 0; k--) {
      // Horner's rule: (re + j im) jx + coefficient.
      const before = re;
      re = denominator[k]! - im * x;
      im = before * x;
    }
    const square = re * re + im * im;
    // Beyond the range of numbers nothing passes.
    const passes = Number.isFinite(square);
    outRe[f] = passes ? re / square : 0;
    outIm[f] = passes ? (sign * im) / square : 0;
  }
}

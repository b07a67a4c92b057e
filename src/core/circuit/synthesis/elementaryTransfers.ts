import type { TransferFunction } from './transferFunction.ts';

/** Second-order all-pass (s² - s/Q + 1) / (s² + s/Q + 1), corner at 1: what the sum of many crossovers is. */
export const secondOrderAllPass = (q: number): TransferFunction => ({
  numerator: [1, -1 / q, 1],
  denominator: [1, 1 / q, 1],
});

/** First-order all-pass (1 - s) / (1 + s), corner at 1. */
export const firstOrderAllPass: TransferFunction = { numerator: [1, -1], denominator: [1, 1] };

/** Second-order low-pass 1 / (s² + s/Q + 1), corner at 1. */
export const secondOrderLowPass = (q: number): TransferFunction => ({ numerator: [1], denominator: [1, 1 / q, 1] });

/** First-order shelf (1 + s/z) / (1 + s/p): gain 1 far below, p/z far above; z and p in rad/s. */
export const firstOrderShelf = (zeroOmega: number, poleOmega: number): TransferFunction => ({
  numerator: [1, 1 / zeroOmega],
  denominator: [1, 1 / poleOmega],
});

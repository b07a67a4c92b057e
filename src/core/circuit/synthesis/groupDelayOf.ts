import { findRoot } from '../../math/findRoot.ts';
import { logarithmicCurvature, logarithmicDerivative, type TransferFunction } from './transferFunction.ts';

/**
 * Group delay -dφ/dω at ω: seconds for ω in rad/s, in units of 1/ω0 for a function whose corner is at 1. Exact, from
 * τ = Re(D'/D - N'/N) at s = jω. Undefined where the response is 0.
 * @example groupDelayOf({ numerator: [1], denominator: [1, 1] }, 0) === 1
 */
export const groupDelayOf = ({ numerator, denominator }: TransferFunction, omega: number): number =>
  logarithmicDerivative(denominator, omega).re - logarithmicDerivative(numerator, omega).re;

const groupDelaySlope = ({ numerator, denominator }: TransferFunction, omega: number): number =>
  logarithmicCurvature(numerator, omega).im - logarithmicCurvature(denominator, omega).im;

const POINTS = 400;

/**
 * The greatest group delay between two angular frequencies, and where it lies. A peak inside is placed to rounding by the
 * zero of the delay's slope; peaks narrower than 1/400 of the logarithmic range may be missed.
 * @example greatestGroupDelay(allPass, 0.01, 100).omega
 */
export function greatestGroupDelay(
  transfer: TransferFunction,
  lowOmega: number,
  highOmega: number,
): { readonly omega: number; readonly delay: number } {
  const omegas = Array.from({ length: POINTS + 1 }, (_, i) => lowOmega * (highOmega / lowOmega) ** (i / POINTS));
  const delays = omegas.map((omega) => groupDelayOf(transfer, omega));
  const at = delays.indexOf(Math.max(...delays));
  const [before, after] = [omegas[at - 1], omegas[at + 1]];
  const isPeak =
    before !== undefined &&
    after !== undefined &&
    groupDelaySlope(transfer, before) > 0 &&
    groupDelaySlope(transfer, after) < 0;
  const omega = isPeak ? findRoot((w) => groupDelaySlope(transfer, w), before, after, 0).x : omegas[at]!;
  return { omega, delay: groupDelayOf(transfer, omega) };
}

import { INCH_M } from './exactInch.ts';
import type { ShownQuantity } from './formatQuantity.ts';

/**
 * Shows a length as whole inches and a fraction in lowest terms, rounded to the nearest 1/16 or 1/32 inch.
 *
 * `lengthM` in metres. Error: half a sixteenth (0.8 mm) or half a thirty-second (0.4 mm).
 * Example: `formatInchFraction(0.1175, 16)` is `{ number: '4 5/8', unit: 'in' }`.
 */
export function formatInchFraction(lengthM: number, denominator: 16 | 32): ShownQuantity {
  if (!Number.isFinite(lengthM)) throw new RangeError(`No length to show: ${lengthM}`);
  const parts = Math.round((Math.abs(lengthM) / INCH_M) * denominator);
  const sign = lengthM < 0 && parts > 0 ? '−' : '';
  const whole = Math.floor(parts / denominator);
  let above = parts % denominator;
  let below: number = denominator;
  while (above > 0 && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  const fraction = above === 0 ? '' : `${above}/${below}`;
  const number = [whole > 0 || fraction === '' ? String(whole) : '', fraction].filter((part) => part !== '').join(' ');
  return { number: sign + number, unit: 'in' };
}

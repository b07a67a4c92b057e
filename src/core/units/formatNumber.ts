const LARGEST_FRACTION = 20;

/**
 * Writes a number with `digits` significant digits, a decimal point and a true minus sign (U+2212); a whole part is never
 * rounded away (1234 stays 1234 at three digits). `zeros`: 'drop' writes 8.2, 'keep' 8.20, so that a running value does
 * not change its width. Throws on a number that is not finite.
 *
 * Example: `formatNumber(-0.8696, 2)` is '−0.87'.
 */
export function formatNumber(value: number, digits: number, zeros: 'drop' | 'keep' = 'drop'): string {
  if (!Number.isFinite(value)) throw new RangeError(`No number to show: ${value}`);
  const rounded = roundToDigits(value, digits);
  const size = Math.abs(rounded);
  const whole = size === 0 ? 1 : Math.floor(Math.log10(size) + 1e-12) + 1;
  const fraction = Math.min(LARGEST_FRACTION, Math.max(0, digits - whole));
  const written = size.toFixed(fraction);
  const shown = zeros === 'drop' && fraction > 0 ? written.replace(/\.?0+$/, '') : written;
  return rounded < 0 && Number(shown) !== 0 ? `−${shown}` : shown;
}

/** Rounds to `digits` significant digits, never coarser than to a whole number. */
export function roundToDigits(value: number, digits: number): number {
  const rounded = Number(value.toPrecision(digits));
  return Math.abs(rounded) < 10 ** digits ? rounded : Math.round(value);
}

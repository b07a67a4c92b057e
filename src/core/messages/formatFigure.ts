/**
 * A number as short text: at least two and at most `digits` significant digits, trailing zeros dropped beyond the first
 * decimal, plain notation from 1e-4 to 1e7 and powers of ten outside. Numbers without a value are named.
 * @example formatFigure(1) === '1.0'; formatFigure(118.04) === '118'
 */
export function formatFigure(value: number, digits = 4): string {
  if (!Number.isFinite(value)) return Number.isNaN(value) ? 'not a number' : 'infinite';
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size < 1e-4 || size >= 1e7) return sign(value.toExponential(Math.max(0, digits - 2)).replace(/\.?0+e\+?/, 'e'));
  const rounded = Number(value.toPrecision(digits));
  if (Number.isInteger(rounded) && Math.abs(rounded) < 10) return sign(rounded.toFixed(1));
  return sign(String(rounded));
}

const sign = (text: string) => text.replace(/^-/, '−');

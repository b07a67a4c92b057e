const EXPONENT_OF: Readonly<Record<string, number>> = {
  f: -15,
  p: -12,
  n: -9,
  u: -6,
  µ: -6,
  μ: -6,
  m: -3,
  '': 0,
  k: 3,
  meg: 6,
  g: 9,
  t: 12,
};
const SUFFIXES = ['f', 'p', 'n', 'u', 'm', '', 'k', 'meg', 'g', 't'] as const;
const LOWEST = -15;

const NUMBER = /^([+-]?(?:\d+[.,]?\d*|[.,]\d+))(?:e([+-]?\d{1,3}))?(.*)$/i;
/** One comma before three digits, as in 1,000: nobody can say whether that is a thousand or one. */
const AMBIGUOUS = /^[+-]?[1-9]\d{0,2},\d{3}$/;

/** Units that may stand behind a value, in lower case; Ω once as the letter and once as the sign of the unit. */
const UNITS = {
  ohm: ['', 'ohm', 'ohms', 'ω', 'r'],
  henry: ['', 'h', 'henry'],
  farad: ['', 'f', 'farad'],
  watt: ['', 'w', 'watt'],
  none: [''],
} as const;
export type NetlistUnit = keyof typeof UNITS;

/**
 * Reads a number as circuit simulators do: an exponent or a suffix (f p n u µ m k meg g t, in either case: M is milli, MEG
 * is mega), then nothing but the unit. A decimal comma is read as a point, unless the number could be a thousand: 1,000 is
 * refused. Returns null for anything else. `1F` is a femtofarad, as in simulators.
 * @example readEngineering('4.7uF', 'farad') === 4.7e-6
 */
export function readEngineering(text: string, unit: NetlistUnit): number | null {
  const match = NUMBER.exec(text);
  if (match === null) return null;
  const [, written = '', exponent = '0', rest = ''] = match;
  if (AMBIGUOUS.test(written)) return null;
  const mantissa = written.replace(',', '.');
  const tail = rest.toLowerCase();
  const letter = tail.charAt(0);
  const suffix = tail.startsWith('meg') ? 'meg' : Object.hasOwn(EXPONENT_OF, letter) ? letter : '';
  const units: readonly string[] = UNITS[unit];
  if (!units.includes(tail.slice(suffix.length))) return null;
  // One decimal conversion, so that 4.7u is the number nearest to 4.7e-6.
  const value = Number(`${mantissa}e${Number(exponent) + EXPONENT_OF[suffix]!}`);
  return Number.isFinite(value) ? value : null;
}

/**
 * The shortest text that `readEngineering` turns into exactly this number.
 * @example engineeringText(4.7e-6) === '4.7u'
 */
export function engineeringText(value: number): string {
  if (value === 0) return '0';
  const [mantissa = '', power = ''] = value.toExponential().split('e');
  const exponent = Number(power);
  const group = Math.floor(exponent / 3);
  const suffix = SUFFIXES[group - LOWEST / 3];
  if (suffix === undefined) return `${mantissa}e${exponent}`;
  const shift = exponent - 3 * group;
  const sign = mantissa.startsWith('-') ? '-' : '';
  const digits = mantissa.replace(/[-.]/g, '').padEnd(shift + 1, '0');
  const fraction = digits.slice(shift + 1);
  return `${sign}${digits.slice(0, shift + 1)}${fraction === '' ? '' : `.${fraction}`}${suffix}`;
}

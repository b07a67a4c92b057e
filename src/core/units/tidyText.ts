// Typographic forms that people type or paste, and the plain form of each. An en dash stays: it may mean a range.
const PLAIN: readonly (readonly [RegExp, string])[] = [
  [/[\u00a0\u2007\u2009\u202f\t]/g, ' '],
  [/[\u00b5\u03bc]/g, 'u'],
  [/[\u2126\u03a9]/g, 'ohm'],
  [/\u2212/g, '-'],
  [/[\u00d7\u00b7\u22c5]/g, '*'],
  [/[\u00f7\u2044\u2215]/g, '/'],
  [/\u00b2/g, '^2'],
  [/\u00b3/g, '^3'],
  [/[\u2033\u201d\u201c]|''/g, '"'],
  [/[\u2032\u2019]/g, "'"],
  [/\u00bd/g, ' 1/2'],
  [/\u00bc/g, ' 1/4'],
  [/\u00be/g, ' 3/4'],
  [/\u215b/g, ' 1/8'],
  [/\u215c/g, ' 3/8'],
  [/\u215d/g, ' 5/8'],
  [/\u215e/g, ' 7/8'],
  [/ +/g, ' '],
  [/ ?([*/^]) ?/g, '$1'],
  [/\b(cu|sq)\.? (in|ft)\b/g, '$1$2'],
];

/**
 * Writes a typed quantity in plain characters: µ as u, Ω as ohm, × and · as *, ÷ as /, ² as ^2, ½ as 1/2, typographic
 * quotes, minus and spaces as plain ones; no space around *, / and ^.
 *
 * Example: `tidyText('1½″')` is '1 1/2"'.
 */
export const tidyText = (text: string): string =>
  PLAIN.reduce((tidy, [pattern, plain]) => tidy.replace(pattern, plain), text).trim();

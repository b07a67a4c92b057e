export type SeriesName = 'E3' | 'E6' | 'E12' | 'E24' | 'E48' | 'E96';

const E24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91] as const;
const everyNth = (n: number): readonly number[] => E24.filter((_, i) => i % n === 0);
const rounded = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => Math.round(100 * 10 ** (i / count)));

const MANTISSAS: Readonly<Record<SeriesName, readonly number[]>> = {
  E3: everyNth(8),
  E6: everyNth(4),
  E12: everyNth(2),
  E24,
  E48: rounded(48),
  E96: rounded(96),
};

/**
 * The preferred values of one decade as whole numbers: two digits from 10 to E24, three from 100 for E48 and E96.
 *
 * E24 is tabulated (eight of its values are not the rounded powers 10^(i/24)); E48 and E96 are round(100·10^(i/n)).
 * Source: IEC 60063:2015, Tables 1 and 2.
 * Example: `preferredMantissas('E6')` is [10, 15, 22, 33, 47, 68].
 */
export const preferredMantissas = (series: SeriesName): readonly number[] => MANTISSAS[series];

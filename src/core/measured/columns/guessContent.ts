import type { CurveQuantity } from '../curveTable.ts';

/**
 * What a column of magnitudes without a unit most likely is: an impedance when all values are above 0 and the middle one
 * is below 45 (ohm), else a response in dB. Common practice, no source.
 */
export function guessQuantity(magnitudes: readonly number[]): CurveQuantity {
  const sorted = magnitudes.toSorted((a, b) => a - b);
  return sorted[0]! > 0 && sorted[sorted.length >> 1]! < 45 ? 'impedance' : 'response';
}

/** π as a file with few digits rounds it. */
const HALF_TURN = Math.PI * 1.001;

const span = (values: readonly number[]): readonly [least: number, greatest: number] => [
  values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY),
  values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
];

/** The unit of a column of phases that says none: radians where it stays within half a turn, else degrees. */
export function guessPhaseUnit(phases: readonly number[]): 'degrees' | 'radians' {
  const [least, greatest] = span(phases);
  return Math.max(-least, greatest) <= HALF_TURN ? 'radians' : 'degrees';
}

/** An unnamed third column that lies between 0 and 1 is no phase: coherence or distortion. */
export function looksLikeShare(column: readonly number[]): boolean {
  const [least, greatest] = span(column);
  return least >= 0 && greatest <= 1;
}

/** Frequencies that begin below 1 and end below 100 are kilohertz. */
export const looksLikeKiloHertz = (frequencies: readonly number[]): boolean =>
  frequencies.some((f) => f > 0 && f < 1) && frequencies.every((f) => f <= 100);

/** The second column ascends throughout and the first one does not: they may have changed places. */
export function looksSwapped(first: readonly number[], second: readonly number[]): boolean {
  const ascends = (values: readonly number[]) => values.every((x, i) => i === 0 || x > values[i - 1]!);
  const descends = (values: readonly number[]) => values.every((x, i) => i === 0 || x < values[i - 1]!);
  return first.length > 3 && !ascends(first) && !descends(first) && ascends(second) && second[0]! > 0;
}

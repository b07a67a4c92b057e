import { type Problem, problem } from '../../messages/problem.ts';
import type { Curve } from '../schema.ts';

/** No microphone hears more, nor so much less, dB re 20 µPa. */
const MOST_LEVEL_DB = 300;

/** What is wrong inside one curve: columns of unequal length, frequencies that do not rise, an impedance of zero or less. */
export function curveFlaws(curve: Curve): Problem[] {
  const { id, name, quantity, frequenciesHz, magnitudes, phasesDeg } = curve;
  const place = { kind: 'curve', id } as const;
  const problems: Problem[] = [];
  const unequal = (what: string, others: number) =>
    problem('document.curve-lengths', place, { name, frequencies: frequenciesHz.length, what, others });
  if (magnitudes.length !== frequenciesHz.length) problems.push(unequal('magnitudes', magnitudes.length));
  if (phasesDeg !== null && phasesDeg.length !== frequenciesHz.length) {
    problems.push(unequal('phases', phasesDeg.length));
  }
  const falling = frequenciesHz.findIndex((hz, k) => k > 0 && !(hz > frequenciesHz[k - 1]!));
  if (falling > 0) {
    problems.push(problem('document.curve-order', place, { name, entry: falling + 1, atHz: frequenciesHz[falling]! }));
  }
  const zero = quantity === 'impedance' ? magnitudes.findIndex((ohm) => !(ohm > 0)) : -1;
  if (zero >= 0) {
    problems.push(problem('document.curve-impedance', place, { name, entry: zero + 1, found: magnitudes[zero]! }));
  }
  const wild = quantity === 'response' ? magnitudes.findIndex((db) => Math.abs(db) > MOST_LEVEL_DB) : -1;
  if (wild >= 0) {
    problems.push(problem('document.curve-level', place, { name, entry: wild + 1, found: magnitudes[wild]! }));
  }
  return problems;
}

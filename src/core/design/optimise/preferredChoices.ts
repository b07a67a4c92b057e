import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { type SeriesName, stepPreferred } from '../../units/index.ts';
import type { CrossoverTrial, ValuedPart } from '../trial/index.ts';
import type { ValueBounds } from './fitProblem.ts';

/** Which values a kind of part can be had in: a preferred series, those in a drawer, or any (a coil is wound to measure). */
export type Stock = SeriesName | readonly number[] | null;
export type Stocks = Readonly<Record<ValuedPart['kind'], Stock>>;

/** Values to choose from per variable, ascending; null: any. */
export type Choices = readonly (Float64Array | null)[];

/**
 * The values within its bounds that each part can be had in. Problem: `optimise.no-choice` for a part that has none.
 * @example preferredChoices(trial, bounds, { resistor: 'E12', capacitor: 'E12', inductor: null })
 */
export function preferredChoices(
  trial: CrossoverTrial,
  bounds: readonly ValueBounds[],
  stocks: Stocks,
): Result<Choices> {
  const choices = trial.parts.map((part, i) => valuesWithin(stocks[part.kind], bounds[i]!));
  const empty = trial.parts.filter((_, i) => choices[i]?.length === 0);
  if (empty.length === 0) return succeed(choices);
  return fail(...empty.map(({ id }) => problem('optimise.no-choice', { kind: 'part', id }, { part: id })));
}

function valuesWithin(stock: Stock, { least, greatest }: ValueBounds): Float64Array | null {
  if (stock === null) return null;
  // A bound that is itself a preferred value counts, however it was worked out.
  const [low, high] = [least * (1 - 1e-9), greatest * (1 + 1e-9)];
  if (typeof stock !== 'string') {
    const values = stock.filter((value) => value > 0 && value >= low && value <= high);
    return Float64Array.from(new Set(values)).sort();
  }
  const values: number[] = [];
  for (let value = stepPreferred(low, stock, 1); value <= high; value = stepPreferred(value, stock, 1)) {
    values.push(value);
  }
  return Float64Array.from(values);
}

/** Index of the choice nearest to a value by its ratio; of two equally near the smaller. */
export function nearestChoice(choices: Float64Array, value: number): number {
  let best = 0;
  choices.forEach((choice, k) => {
    if (Math.abs(Math.log(choice / value)) < Math.abs(Math.log(choices[best]! / value)) - 1e-12) best = k;
  });
  return best;
}

/**
 * Plain rounding: every part to its nearest choice by the ratio, parts of any value as they are.
 * @example roundedValues(optimum, choices)
 */
export const roundedValues = (values: Float64Array, choices: Choices): Float64Array =>
  values.map((value, i) => {
    const list = choices[i];
    return list ? list[nearestChoice(list, value)]! : value;
  });

import {
  type Tried,
  trialImpedance,
  trialImpedanceDerivatives,
  trialPower,
  trialPowerDerivatives,
} from '../trial/index.ts';
import type { FitProblem, PriceLaw } from './fitProblem.ts';

/** Values c of one limit, kept where c ≤ 0, relative; one per frequency, or one alone. */
export interface LimitRow {
  /** What it is: `impedance V1`, `power R1`, `cost`. */
  readonly name: string;
  readonly kind: 'impedance' | 'power' | 'cost';
  readonly id: string;
  readonly values: Float64Array;
  /** dc/d ln p per variable; asked for only where some value counts. */
  derivatives(): readonly Float64Array[];
}

/** ln(least / |Z|), P / greatest - 1, cost / most - 1. */
export function limitRows({ limits, trial }: FitProblem, tried: Tried): LimitRow[] {
  const impedances = limits.leastImpedances.map(({ amplifierId, ohm }): LimitRow => {
    const { re, im } = trialImpedance(tried, amplifierId);
    return {
      name: `impedance ${amplifierId}`,
      kind: 'impedance',
      id: amplifierId,
      values: re.map((x, f) => Math.log(ohm / Math.hypot(x, im[f]!))),
      derivatives: () => trialImpedanceDerivatives(tried, amplifierId).map((d) => d.re.map((x) => -x)),
    };
  });
  const powers = limits.greatestPowers.map(({ partId, watt }): LimitRow => {
    return {
      name: `power ${partId}`,
      kind: 'power',
      id: partId,
      values: trialPower(tried, partId).map((p) => p / watt - 1),
      derivatives: () => trialPowerDerivatives(tried, partId).map((d) => d.map((x) => x / watt)),
    };
  });
  const { cost } = limits;
  if (cost === null) return [...impedances, ...powers];
  return [
    ...impedances,
    ...powers,
    {
      name: 'cost',
      kind: 'cost',
      id: 'cost',
      values: Float64Array.of(costOf(cost.prices, tried.values) / cost.most - 1),
      derivatives: () =>
        trial.variables.map((_, i) => Float64Array.of(priceSlope(cost.prices[i], tried.values[i]!) / cost.most)),
    },
  ];
}

export const costOf = (prices: readonly (PriceLaw | null)[], values: Float64Array): number =>
  prices.reduce((sum, law, i) => (law === null ? sum : sum + law.fixed + law.perUnit * values[i]! ** law.exponent), 0);

const priceSlope = (law: PriceLaw | null | undefined, value: number): number =>
  law ? law.perUnit * law.exponent * value ** law.exponent : 0;

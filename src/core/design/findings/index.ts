import type { Finding } from '../../messages/problem.ts';
import { coilHeat } from './coilHeat.ts';
import type { Check, Context } from './context.ts';
import { crossoverPolarity } from './crossoverPolarity.ts';
import { excursion } from './excursion.ts';
import { heavyFilling } from './heavyFilling.ts';
import { leastImpedance } from './leastImpedance.ts';
import { loudness } from './loudness.ts';
import { partPower } from './partPower.ts';
import { portSpeed } from './portSpeed.ts';
import { silentWay } from './silentWay.ts';

/** Those that a first picture cannot do without; `laterChecks` has the rest. */
const checks: readonly Check[] = [
  leastImpedance,
  partPower,
  coilHeat,
  excursion,
  crossoverPolarity,
  portSpeed,
  silentWay,
  loudness,
  heavyFilling,
];
const weight = { danger: 0, warning: 1, note: 2 };

/** Every flaw that the checks and those in `more` find, the gravest first; the order of the checks within one severity. */
export function findFlaws(context: Context, more: readonly Check[] = []): Finding[] {
  const found = [...checks, ...more].flatMap((check) => check(context));
  return found.sort((a, b) => weight[a.severity] - weight[b.severity]);
}

export type { Check, Context } from './context.ts';

import type { Finding } from '../../messages/problem.ts';
import { amplifierEnds } from './amplifierEnds.ts';
import { cabinetFit } from './cabinetFit.ts';
import { coilHeat } from './coilHeat.ts';
import type { Check, Context } from './context.ts';
import { crossoverPolarity } from './crossoverPolarity.ts';
import { excursion } from './excursion.ts';
import { leastImpedance } from './leastImpedance.ts';
import { loudness } from './loudness.ts';
import { partPower } from './partPower.ts';
import { portSpeed } from './portSpeed.ts';
import { silentWay } from './silentWay.ts';
import { unsuitedBox } from './unsuitedBox.ts';

const checks: readonly Check[] = [
  leastImpedance,
  partPower,
  coilHeat,
  amplifierEnds,
  excursion,
  crossoverPolarity,
  portSpeed,
  silentWay,
  loudness,
  cabinetFit,
  unsuitedBox,
];
const weight = { danger: 0, warning: 1, note: 2 };

/** Every flaw the checks find, the gravest first; the order of the checks within one severity. */
export function findFlaws(context: Context): Finding[] {
  const found = checks.flatMap((check) => check(context));
  return found.sort((a, b) => weight[a.severity] - weight[b.severity]);
}

export type { Check, Context } from './context.ts';

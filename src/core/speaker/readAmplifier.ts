import { activeFilterProblems, filterTransfer } from '../circuit/index.ts';
import type { Chain } from '../document/schema.ts';
import type { Problem } from '../messages/problem.ts';
import type { ModelAmplifier } from './model.ts';

/** An amplifier channel with its active high-pass; a filter that cannot be is said in `problems` and left out. */
export function readAmplifier(
  settings: Chain['amplifiers'][number],
  driveV: number,
  problems: Problem[],
): ModelAmplifier {
  const { id, outputResistanceOhm, cableOhm, highPass } = settings;
  const amplifier = { id, voltageV: driveV, resistanceOhm: outputResistanceOhm + cableOhm };
  if (highPass === null) return amplifier;
  const filter = { kind: 'high-pass', ...highPass } as const;
  const flaws = activeFilterProblems(filter);
  problems.push(...flaws.map((flaw) => ({ ...flaw, place: { kind: 'part', id, field: 'highPass' } as const })));
  if (flaws.length > 0) return amplifier;
  return { ...amplifier, drive: (omegas, re, im) => filterTransfer(filter, omegas, re, im) };
}

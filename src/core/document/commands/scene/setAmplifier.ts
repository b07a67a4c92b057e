import { fail, problem, succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withChanges } from '../withChanges.ts';

export const setAmplifier: Applier<'set-amplifier'> = (project, { id, changes }) => {
  const { chain } = project;
  if (!chain.amplifiers.some((amplifier) => amplifier.id === id)) {
    return fail(problem('document.unknown-amplifier', { kind: 'part', id }));
  }
  const amplifiers = replaceWhere(
    chain.amplifiers,
    (amplifier) => amplifier.id === id,
    (amplifier) => withChanges(amplifier, changes),
  );
  return succeed(withChanges(project, { chain: withChanges(chain, { amplifiers }) }));
};

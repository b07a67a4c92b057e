import { fail, problem, succeed } from '../../../messages/problem.ts';
import type { Applier } from '../applier.ts';
import { withParts } from './withParts.ts';

export const removeAmplifier: Applier<'remove-amplifier'> = (project, { id }) => {
  const { network, chain } = project;
  const amplifiers = network.parts.filter((part) => part.kind === 'amplifier');
  const place = { kind: 'part', id } as const;
  if (!amplifiers.some((part) => part.id === id)) return fail(problem('document.unknown-amplifier', place));
  if (amplifiers.length === 1) return fail(problem('document.last-amplifier', place));
  const rest = withParts(
    project,
    network.parts.filter((part) => part.id !== id),
  );
  const settings = chain.amplifiers.filter((amplifier) => amplifier.id !== id);
  return succeed({ ...rest, chain: { ...chain, amplifiers: settings } });
};

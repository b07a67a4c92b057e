import { RETURN } from '../../circuit/branch.ts';
import { type Problem, problem } from '../../messages/problem.ts';
import type { Design } from '../design.ts';
import { duplicates } from './duplicates.ts';

const fold = (name: string) => name.toLowerCase();

/** Parts, nodes and amplifier channels that do not fit together. Circuit text is case-insensitive, so names are too. */
export function networkReferences({ network, chain, drivers }: Design): Problem[] {
  const { parts } = network;
  const problems = duplicates(
    parts.map((part) => part.id),
    'part',
    'parts',
    fold,
  );

  const spelling = new Map<string, string>();
  for (const node of parts.flatMap((part) => part.nodes)) {
    const first = spelling.get(fold(node));
    if (first === undefined) spelling.set(fold(node), node);
    else if (first !== node) {
      problems.push(problem('document.node-case', { kind: 'node', id: node }, { a: first, b: node }));
    }
  }

  const speakers = parts.filter((part) => part.kind === 'speaker');
  const amplifiers = parts.filter((part) => part.kind === 'amplifier');
  if (speakers.length === 0) problems.push(problem('document.no-speaker', { kind: 'document' }));
  if (amplifiers.length === 0) problems.push(problem('document.no-amplifier', { kind: 'document' }));

  const driverIds = new Set(drivers.map((driver) => driver.id));
  for (const { id, driverId } of speakers) {
    if (!driverIds.has(driverId)) {
      problems.push(problem('document.speaker-without-driver', { kind: 'part', id }, { driverId }));
    }
  }

  const settings = chain.amplifiers.map((amplifier) => amplifier.id);
  problems.push(...duplicates(settings, 'part', 'amplifier settings'));
  for (const { id, nodes } of amplifiers) {
    const place = { kind: 'part', id } as const;
    if (!settings.includes(id)) problems.push(problem('document.amplifier-without-settings', place));
    if (nodes[1] !== RETURN) problems.push(problem('document.amplifier-return', place, { node: nodes[1] }));
  }
  for (const id of settings) {
    if (!amplifiers.some((part) => part.id === id)) {
      problems.push(problem('document.settings-without-amplifier', { kind: 'part', id }));
    }
  }
  return problems;
}

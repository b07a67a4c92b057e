import type { Part } from '../../../circuit/part.ts';

/**
 * The present amplifiers that go on driving a circuit whose text names none, as far as it has their nodes; empty where the text
 * has an amplifier of its own.
 * @example keptAmplifiers(project.network.parts, read.value).map(({ id }) => id) // ['V1']
 */
export function keptAmplifiers(present: readonly Part[], parts: readonly Part[]): readonly Part[] {
  if (parts.some((part) => part.kind === 'amplifier')) return [];
  const nodes = new Set(parts.flatMap((part) => part.nodes));
  return present.filter((part) => part.kind === 'amplifier' && nodes.has(part.nodes[0]));
}

import type { Part } from '../circuit/part.ts';
import { returnNodes } from '../schematic/returnNodes.ts';

/**
 * Which amplifier feeds each speaker of a network: the first whose plus is joined to it by parts, not over the return. A speaker that
 * none feeds is left out.
 * @example fedBy(project.network.parts).get('LS1') // 'V1'
 */
export function fedBy(parts: readonly Part[]): ReadonlyMap<string, string> {
  const returns = returnNodes(parts);
  const wired = parts.filter(({ kind }) => kind !== 'amplifier');
  const fed = new Map<string, string>();
  for (const { kind, id, nodes } of parts) {
    if (kind !== 'amplifier') continue;
    const reached = new Set(nodes.filter((node) => !returns.has(node)));
    // Grows while it is walked.
    for (const node of reached) {
      for (const part of wired) {
        if (!(part.nodes as readonly string[]).includes(node)) continue;
        if (part.kind === 'speaker' && !fed.has(part.id)) fed.set(part.id, id);
        for (const next of part.nodes) if (!returns.has(next)) reached.add(next);
      }
    }
  }
  return fed;
}

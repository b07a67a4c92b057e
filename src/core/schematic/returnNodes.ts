import { RETURN } from '../circuit/branch.ts';
import type { Part } from '../circuit/part.ts';

/** The circuit's return, and every minus that several amplifiers share. */
export function returnNodes(parts: readonly Part[]): Set<string> {
  const minus = new Map<string, number>();
  const used = parts.some((part) => part.nodes.includes(RETURN));
  for (const { kind, nodes } of parts) {
    if (kind !== 'amplifier' || nodes[0] === nodes[1]) continue;
    const node = nodes[0] === RETURN ? RETURN : nodes[1];
    minus.set(node, (minus.get(node) ?? 0) + 1);
  }
  const shared = [...minus].filter(([, count]) => count > 1).map(([node]) => node);
  const main = used ? RETURN : [...minus.keys()][0];
  return new Set(main === undefined ? shared : [main, ...shared]);
}

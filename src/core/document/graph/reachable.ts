import type { Part } from '../../circuit/part.ts';

/** All nodes that can be reached from `from` through parts without passing `barred` nodes (`from` itself included). */
export function reachable(parts: readonly Part[], from: string, barred: ReadonlySet<string>): Set<string> {
  const found = new Set<string>();
  const waiting = barred.has(from) ? [] : [from];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (found.has(node)) continue;
    found.add(node);
    for (const { nodes } of parts) {
      if (!nodes.includes(node)) continue;
      for (const next of nodes) if (!barred.has(next) && !found.has(next)) waiting.push(next);
    }
  }
  return found;
}

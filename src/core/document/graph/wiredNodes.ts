import type { Part } from '../../circuit/part.ts';

const isWire = (part: Part) => part.kind === 'jumper' || (part.kind === 'resistor' && part.ohm === 0);

/** For each node a name that it shares with all nodes joined to it by jumpers and resistors of zero ohm. */
export function wiredNodes(parts: readonly Part[]): (node: string) => string {
  const leader = new Map<string, string>();
  const find = (node: string): string => {
    const up = leader.get(node);
    return up === undefined ? node : find(up);
  };
  for (const part of parts) {
    if (!isWire(part)) continue;
    const [a, b] = [find(part.nodes[0]), find(part.nodes[1])];
    if (a !== b) leader.set(a, b);
  }
  return find;
}

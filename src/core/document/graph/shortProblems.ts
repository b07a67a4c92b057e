import type { Part } from '../../circuit/part.ts';
import { type Problem, problem } from '../../messages/problem.ts';
import { wiredNodes } from './wiredNodes.ts';

/**
 * What an edit of the circuit newly shorts: an amplifier or a speaker with both terminals joined (directly, through
 * jumpers or through 0 Ω), two amplifiers' outputs joined, or a part with both ends on one node.
 * What was so before is not held against the edit, so that a broken circuit can be mended step by step.
 */
export function shortProblems(before: readonly Part[], after: readonly Part[]): readonly Problem[] {
  const old = new Set(shorts(before).map(key));
  return shorts(after).filter((flaw) => !old.has(key(flaw)));
}

const key = ({ code, place, values }: Problem) => `${code} ${place.id} ${values.b ?? ''}`;

function shorts(parts: readonly Part[]): Problem[] {
  const wired = wiredNodes(parts);
  const outputs = new Map<string, string>();
  const problems: Problem[] = [];
  for (const { id, kind, nodes } of parts) {
    const place = { kind: 'part', id } as const;
    if (kind !== 'amplifier' && kind !== 'speaker') {
      if (nodes[0] === nodes[1]) problems.push(problem('document.both-ends', place, { node: nodes[0] }));
      continue;
    }
    if (wired(nodes[0]) === wired(nodes[1])) problems.push(problem('document.would-short', place, { kind }));
    if (kind !== 'amplifier') continue;
    const other = outputs.get(wired(nodes[0]));
    if (other !== undefined) problems.push(problem('document.would-join-amplifiers', place, { a: other, b: id }));
    outputs.set(wired(nodes[0]), id);
  }
  return problems;
}

import { type Place, type Problem, problem } from '../../messages/problem.ts';

/** One problem for each id that stands twice; `fold` makes ids alike that count as the same. */
export function duplicates(
  ids: readonly string[],
  kind: Place['kind'],
  what: string,
  fold: (id: string) => string = (id) => id,
): Problem[] {
  const seen = new Set<string>();
  const twice: Problem[] = [];
  for (const id of ids) {
    const key = fold(id);
    if (seen.has(key)) twice.push(problem('document.duplicate-id', { kind, id }, { what, id }));
    seen.add(key);
  }
  return twice;
}

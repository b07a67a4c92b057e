import { nodesBelow, parse, type SyntaxNode } from './syntax.ts';

const CODE = /^[a-z]+\.[a-z0-9]+(-[a-z0-9]+)*$/;

const texts = (node: SyntaxNode): string[] =>
  [...nodesBelow(node)].flatMap(({ type, value }) => (type === 'Literal' && typeof value === 'string' ? [value] : []));

const nameOf = (node: unknown): string => String((node as SyntaxNode | undefined)?.name ?? '');

/**
 * Codes that a source uses: in the first argument of `problem(...)` or `finding(...)`, as the value of a field `code`,
 * and any text made like one whose room is among `rooms` (codes handed to a function on the way).
 */
export function codesUsed(path: string, text: string, rooms: ReadonlySet<string>): readonly string[] {
  const found = new Set<string>();
  for (const node of nodesBelow(parse(path, text))) {
    if (node.type === 'CallExpression' && /^(problem|finding)$/.test(nameOf(node.callee))) {
      const [first] = node.arguments as readonly SyntaxNode[];
      for (const code of first === undefined ? [] : texts(first)) found.add(code);
    }
    if (node.type === 'Property' && nameOf(node.key) === 'code')
      for (const code of texts(node.value as SyntaxNode)) found.add(code);
    if (node.type === 'Literal' && typeof node.value === 'string' && CODE.test(node.value))
      if (rooms.has(node.value.split('.')[0]!)) found.add(node.value);
  }
  return [...found].sort();
}

/** Codes that a file of src/core/messages has a sentence for: the quoted keys of its records. */
export const codesWorded = (path: string, text: string): readonly string[] =>
  [...nodesBelow(parse(path, text))].flatMap((node) => {
    if (node.type !== 'Property') return [];
    const { type, value } = node.key as SyntaxNode;
    return type === 'Literal' && typeof value === 'string' && CODE.test(value) ? [value] : [];
  });

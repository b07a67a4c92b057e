import { posix } from 'node:path';
import { parseSync } from 'oxc-parser';

export interface SyntaxNode {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

export interface Import {
  /** A path from the top of the project where the source is relative, else the package as written. */
  readonly target: string;
  readonly inProject: boolean;
  /** Nothing of it is left after the types are taken out. */
  readonly typeOnly: boolean;
}

const isNode = (value: unknown): value is SyntaxNode =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

const childrenOf = (node: SyntaxNode): readonly SyntaxNode[] => Object.values(node).flat().filter(isNode);

/** A node and all nodes below it. */
export function* nodesBelow(node: SyntaxNode): Generator<SyntaxNode> {
  yield node;
  for (const child of childrenOf(node)) yield* nodesBelow(child);
}

export const parse = (path: string, text: string): SyntaxNode => {
  const { program, errors } = parseSync(path, text);
  const [error] = errors;
  if (error !== undefined) throw new SyntaxError(`${path}: ${error.message}`);
  return program as unknown as SyntaxNode;
};

const literal = (node: unknown): string | null =>
  isNode(node) && node.type === 'Literal' && typeof node.value === 'string' ? node.value : null;

const isTypeOnly = (node: SyntaxNode): boolean => {
  if (node.importKind === 'type' || node.exportKind === 'type' || node.type === 'TSImportType') return true;
  const specifiers = (node.specifiers ?? []) as readonly SyntaxNode[];
  return specifiers.length > 0 && specifiers.every((one) => one.importKind === 'type' || one.exportKind === 'type');
};

/** The source that a node brings in: imports, re-exports, dynamic imports, type imports, and `new URL` beside the file. */
const sourceOf = (node: SyntaxNode): string | null => {
  if (/^(ImportDeclaration|Export(Named|All)Declaration|ImportExpression|TSImportType)$/.test(node.type))
    return literal(node.source);
  if (node.type === 'NewExpression' && (node.callee as SyntaxNode).name === 'URL') {
    const [address, base] = node.arguments as readonly SyntaxNode[];
    const beside = base !== undefined && [...nodesBelow(base)].some(({ type }) => type === 'MetaProperty');
    return beside ? literal(address) : null;
  }
  return null;
};

/** Everything that a file brings in; type-only imports count. */
export const importsOf = (path: string, text: string): readonly Import[] =>
  [...nodesBelow(parse(path, text))].flatMap((node) => {
    const source = sourceOf(node);
    if (source === null) return [];
    const inProject = source.startsWith('.') || source.startsWith('/');
    const target = source.startsWith('.') ? posix.join(posix.dirname(path), source) : source.replace(/^\//, '');
    return [{ target, inProject, typeOnly: isTypeOnly(node) }];
  });

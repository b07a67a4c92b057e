import { importsOf, nodesBelow, parse, type SyntaxNode } from '../rules/syntax.ts';

const ALLOWED = [/^src\/core\//, /^src\/plot\//, /^test\/references\/(convert|adapter)\.ts$/];

/** Why this adapter brings in something that it must not; empty where all is well. */
export const forbiddenImports = (path: string, text: string): readonly string[] =>
  importsOf(path, text)
    .filter(({ target, inProject }) => !inProject || !ALLOWED.some((allowed) => allowed.test(target)))
    .map(({ target }) => target);

const ARITHMETIC = /^(\*\*|[-+*/%])=?$/;

const isText = (node: SyntaxNode): boolean =>
  node.type === 'TemplateLiteral' ||
  (node.type === 'Literal' && typeof node.value === 'string') ||
  (node.type === 'BinaryExpression' &&
    node.operator === '+' &&
    (isText(node.left as SyntaxNode) || isText(node.right as SyntaxNode)));

const isNumberLiteral = (node: SyntaxNode): boolean => node.type === 'Literal' && typeof node.value === 'number';

const isMath = ({ type, name }: SyntaxNode): boolean => type === 'Identifier' && name === 'Math';

/** The places of a list that stand next to one: `list[i + 1]`. */
const neighbourIndexes = (program: SyntaxNode): ReadonlySet<unknown> =>
  new Set(
    [...nodesBelow(program)]
      .filter(({ type, computed }) => type === 'MemberExpression' && computed === true)
      .map(({ property }) => property as SyntaxNode)
      .filter(
        ({ type, operator, right }) =>
          type === 'BinaryExpression' && /^[-+]$/.test(String(operator)) && isNumberLiteral(right as SyntaxNode),
      ),
  );

/** Every place where an adapter computes: arithmetic on numbers, and Math. Joining texts and the next place of a list are selection. */
export function arithmeticIn(path: string, text: string): readonly string[] {
  const program = parse(path, text);
  const indexes = neighbourIndexes(program);
  return [...nodesBelow(program)]
    .filter((node) => {
      if (isMath(node)) return true;
      if (node.type === 'UnaryExpression')
        return node.operator === '-' && !isNumberLiteral(node.argument as SyntaxNode);
      if (node.type === 'AssignmentExpression') return ARITHMETIC.test(String(node.operator));
      if (node.type !== 'BinaryExpression' || !ARITHMETIC.test(String(node.operator))) return false;
      return !isText(node) && !indexes.has(node);
    })
    .map(({ start, end }) => text.slice(start, end));
}

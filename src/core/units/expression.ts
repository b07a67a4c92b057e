import { create, type MathNode, parseDependencies, unitDependencies } from 'mathjs';
import { fail, type Result } from '../messages/problem.ts';
import { type Amount, isPlain, operate, plainAmount, Refusal, sameDimensions } from './amount.ts';
import { expressionText } from './expressionText.ts';
import { findUnit, findUnitAnywhere, requireUnit, toInside } from './findUnit.ts';
import { finiteQuantity, quantityProblem, tidyQuantityText } from './parseQuantityNow.ts';
import type { QuantityKind } from './quantityKind.ts';
import { UNIT_TABLE } from './unitTable.ts';

// The only file that imports mathjs: its parser reads the text, its units give size and dimensions. Nothing is ever
// evaluated by it; the walk below knows numbers, units and + - * / ^ and nothing else.

const LARGEST_NODE_COUNT = 32;
const DEEPEST_BRACKETS = 4;
const ALLOWED = /^[0-9A-Za-z.+\-*/^() ]+$/;
/** The parser also reads 0x1f, 0b101 and 0o17. */
const OTHER_BASES = /(?<![\d.])0(?:x[\da-f]|b[01]|o[0-7])/i;
/** Units that no field has by itself, for products such as T*m and N/A. */
const BASE_UNITS: ReadonlyMap<string, string> = new Map(['A', 'N', 'mN', 'T'].map((name) => [name, name]));
const KINDS = Object.keys(UNIT_TABLE) as readonly QuantityKind[];

const bracketDepth = (text: string): number => {
  let depth = 0;
  let deepest = 0;
  for (const c of text) {
    if (c === '(') deepest = Math.max(deepest, ++depth);
    if (c === ')') depth--;
  }
  return deepest;
};

export type ExpressionReader = (text: string, kind: QuantityKind, defaultUnit: string) => Result<number>;

/**
 * Makes the reader of quantities with arithmetic: numbers, units, + - × ÷ and whole powers, brackets, mixed numbers.
 * Plain numbers alone are in `defaultUnit`; once a unit stands in the text every term must carry one. At most 64
 * characters, 4 brackets deep, 32 terms and operators.
 *
 * Fails with the problems of `parseQuantityNow` and with units.mixed-units or too-deep; no text makes it throw.
 *
 * Example: `createExpressionReader()('2*4.7 uF + 1.5 uF', 'capacitance', 'µF')` succeeds with 1.09e-5.
 */
export function createExpressionReader(): ExpressionReader {
  const math = create(
    { parseDependencies: parseDependencies!, unitDependencies: unitDependencies! },
    { predictable: true },
  );
  const amountOf = (unit: string): Amount => {
    const { value, dimensions } = new math.Unit(1, unit);
    return { size: value, dimensions };
  };

  const amountOfText = (expression: string, kind: QuantityKind): Amount => {
    let count = 0;
    const visit = (node: MathNode): Amount => {
      if (++count > LARGEST_NODE_COUNT) throw new Refusal('units.not-understood');
      switch (node.type) {
        case 'ConstantNode': {
          const { value } = node as MathNode & { value: unknown };
          if (typeof value !== 'number' || !Number.isFinite(value)) throw new Refusal('units.not-understood');
          return plainAmount(value);
        }
        case 'ParenthesisNode':
          return visit((node as MathNode & { content: MathNode }).content);
        case 'SymbolNode': {
          const { name } = node as MathNode & { name: string };
          if (name === 'pi') return plainAmount(Math.PI);
          const unit = (findUnit(name, kind) ?? findUnitAnywhere(name)?.entry)?.arithmetic ?? BASE_UNITS.get(name);
          if (unit === undefined) throw new Refusal('units.unknown-unit', name);
          return amountOf(unit);
        }
        case 'OperatorNode': {
          const { fn, args } = node as MathNode & { fn: string; args: readonly MathNode[] };
          return operate(fn, args.map(visit));
        }
        default:
          throw new Refusal('units.not-understood');
      }
    };
    return visit(math.parse(expression));
  };

  const kindOf = (amount: Amount): string =>
    KINDS.find((kind) => {
      const { arithmetic } = UNIT_TABLE[kind][0]!;
      return arithmetic !== null && sameDimensions(amountOf(arithmetic), amount);
    }) ?? '';

  return (text, kind, defaultUnit) => {
    const refuse = (code: string, values = {}) => fail<number>(quantityProblem(code, kind, { text, ...values }));
    const tidied = tidyQuantityText(text, kind);
    if (!tidied.ok) return tidied;
    const base = UNIT_TABLE[kind][0]!.arithmetic;
    let body = tidied.value;
    let unit = requireUnit(defaultUnit, kind);
    if (base === null) {
      // Percent, decibel and temperature scales take arithmetic before the unit only: (20 + 3) °C.
      const [, front, name] = /^(.*[\d.)]) ?([A-Za-z%°]+)$/.exec(body) ?? [];
      const trailing = name === undefined ? undefined : findUnit(name, kind);
      if (front !== undefined && trailing !== undefined) [body, unit] = [front, trailing];
    }
    const expression = expressionText(body, kind);
    if (!ALLOWED.test(expression) || OTHER_BASES.test(expression)) return refuse('units.not-understood');
    if (bracketDepth(expression) > DEEPEST_BRACKETS) return refuse('units.too-deep');
    try {
      const amount = amountOfText(expression, kind);
      if (isPlain(amount)) return finiteQuantity(toInside(String(amount.size), unit), text, kind);
      const target = base === null ? plainAmount(1) : amountOf(base);
      if (!sameDimensions(amount, target)) return refuse('units.wrong-kind', { found: kindOf(amount) });
      // 15 digits: drops the last bit of noise that sums of decimal fractions leave.
      return finiteQuantity(Number((amount.size / target.size).toPrecision(15)), text, kind);
    } catch (thrown) {
      return thrown instanceof Refusal ? refuse(thrown.code, { unit: thrown.unit }) : refuse('units.not-understood');
    }
  };
}

import type { Result } from '../messages/problem.ts';
import { parseQuantityNow } from './parseQuantityNow.ts';
import type { QuantityKind } from './quantityKind.ts';

/**
 * Reads any quantity that a person types, arithmetic included ("2*4.7 uF + 1.5 uF", "1 1/2 in"). The part that does
 * arithmetic is fetched when it is first needed. Values and problems as for `parseQuantityNow`.
 *
 * Example: `await parseQuantity('3/4 in', 'length', 'mm')` succeeds with 0.01905.
 */
export async function parseQuantity(text: string, kind: QuantityKind, defaultUnit: string): Promise<Result<number>> {
  const atOnce = parseQuantityNow(text, kind, defaultUnit);
  if (atOnce !== 'needs-expression') return atOnce;
  const { createExpressionReader } = await import('./expression.ts');
  return createExpressionReader()(text, kind, defaultUnit);
}

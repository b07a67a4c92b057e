import { readLetterCode } from './letterCode.ts';
import type { QuantityKind } from './quantityKind.ts';

const CODED = { resistance: 'ohm', capacitance: 'F', inductance: 'H' } as const;

/**
 * Rewrites a tidied text for the expression parser: mixed numbers (1 1/2), feet with inches (5 ft 3 in), inch and foot
 * signs, the word `in` (an operator to the parser), degree signs and markings such as 4R7.
 *
 * Example: `expressionText('1 1/2"', 'length')` is '(1+1/2) inch'.
 */
export function expressionText(tidied: string, kind: QuantityKind): string {
  let text = tidied;
  if (kind === 'resistance' || kind === 'capacitance' || kind === 'inductance') {
    text = text.replace(/(?<![\w.])\d*[A-Za-z]\d+(?![\w.])/g, (token) => {
      const code = readLetterCode(token, kind);
      return code === null ? token : `(${code.value} ${CODED[kind]})`;
    });
  }
  const number = String.raw`\d+(?: \d+/\d+|/\d+|\.\d*)?`;
  return text
    .replace(
      new RegExp(`(${number}) ?(?:'|ft|foot|feet) ?(${number}) ?(?:"|in|inch|inches)(?![\\w^])`, 'g'),
      '($1 ft + $2 in)',
    )
    .replace(/(?<![\d./])(\d+) (\d+)\/(\d+)/g, '($1+$2/$3)')
    .replace(/"/g, ' inch')
    .replace(/'/g, ' ft')
    .replace(/°/g, ' deg')
    .replace(/(?<![A-Za-z])in(?![A-Za-z\d])/g, 'inch')
    .replace(/(?<![A-Za-z])in([23])(?!\w)/g, 'inch^$1')
    .replace(/(?<![A-Za-z])(ft|mm|cm|m)([23])(?!\w)/g, '$1^$2')
    .replace(/ +/g, ' ');
}

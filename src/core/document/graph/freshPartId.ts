import type { Part, PartKind } from '../../circuit/part.ts';
import { partPrefix } from './partPrefix.ts';

/**
 * The next name of a kind: one above the greatest number in use, so that a name which was given up does not come back
 * for another part while kept states and lists still mean the old one by it.
 * @example with R1, R2 and R6 present, freshPartId(parts, 'resistor') === 'R7'
 */
export function freshPartId(parts: readonly Pick<Part, 'id'>[], kind: PartKind): string {
  const prefix = partPrefix[kind];
  const numbered = new RegExp(`^${prefix}(\\d{1,9})$`, 'i');
  const numbers = parts.map((part) => Number(numbered.exec(part.id)?.[1] ?? 0));
  return `${prefix}${Math.max(0, ...numbers) + 1}`;
}

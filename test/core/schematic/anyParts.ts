import fc from 'fast-check';
import type { Part } from '../../../src/core/circuit/part.ts';
import { partFrom } from './partsFrom.ts';

/** Any list of parts at all: few nodes or many, shorted, floating, several amplifiers, speakers anywhere. */
export function anyParts(most: number): fc.Arbitrary<Part[]> {
  return fc.tuple(fc.integer({ min: 0, max: most }), fc.integer({ min: 1, max: most })).chain(([count, nodeCount]) => {
    const node = fc.integer({ min: 0, max: nodeCount }).map((k) => (k === 0 ? '0' : `n${k}`));
    const kind = fc.constantFrom('R', 'C', 'L', 'R', 'C', 'L', 'J', 'LS', 'A');
    return fc
      .array(fc.tuple(kind, node, node), { minLength: count, maxLength: count })
      .map((rows) => rows.map(([letter, from, to], k) => partFrom(`${letter}${k} ${from} ${to}`)));
  });
}

export interface Edit {
  readonly parts: Part[];
  /** What was done, for the message of a failing test. */
  readonly what: string;
}

/**
 * One edit of a circuit such as a person makes: a part across, beside or in series with another, one taken out (its place
 * left open), taken out and closed up, or swapped for another kind. `dice` are numbers from 0 to below 1.
 */
export function edited(parts: readonly Part[], id: string, dice: readonly [number, number, number, number]): Edit {
  const pick = <T>(list: readonly T[], die: number): T => list[Math.floor(die * list.length)]!;
  const letter = pick(['R', 'C', 'L'], dice[0]);
  const target = pick(
    parts.filter((part) => part.kind !== 'speaker' && part.kind !== 'amplifier'),
    dice[1],
  );
  const [a, b] = target.nodes;
  const at = (nodes: readonly [string, string], part: Part): Part => ({ ...part, nodes });
  const without = parts.filter((part) => part !== target);
  const node = pick([...new Set(parts.flatMap((part) => part.nodes))], dice[3]);
  switch (pick(['across', 'beside', 'series', 'out', 'closed', 'kind'] as const, dice[2])) {
    case 'across':
      return { what: `${letter} from ${node} to 0`, parts: [...parts, partFrom(`${letter}${id} ${node} 0`)] };
    case 'beside':
      return { what: `${letter} beside ${target.id}`, parts: [...parts, partFrom(`${letter}${id} ${a} ${b}`)] };
    case 'series': {
      const moved = parts.map((part) => (part === target ? at([a, `new${id}`], part) : part));
      return { what: `${letter} after ${target.id}`, parts: [...moved, partFrom(`${letter}${id} new${id} ${b}`)] };
    }
    case 'out':
      return { what: `without ${target.id}`, parts: without };
    case 'closed': {
      // A leg is only taken out: closing it up would short what it stands across.
      if (a === '0' || b === '0') return { what: `without ${target.id}`, parts: without };
      const joined = (end: string): string => (end === b ? a : end);
      const closed = without.map((part) => at([joined(part.nodes[0]), joined(part.nodes[1])], part));
      return { what: `${target.id} closed up`, parts: closed };
    }
    case 'kind': {
      const swapped = { ...partFrom(`${letter}1 x y`), id: target.id };
      return {
        what: `${target.id} as ${letter}`,
        parts: parts.map((part) => (part === target ? at(part.nodes, swapped) : part)),
      };
    }
  }
}

import { type Branch, RETURN } from './branch.ts';
import type { StampEntry, StampProgram } from './compiledCircuit.ts';
import type { PairSlots } from './eliminationProgram.ts';

/** `excitations`: row, branch, source, sign. Adds sign × the branch's value × the source's voltage to the right-hand side. */
export const EXCITATION_LENGTH = 4;

type Constant = { branch: number; sign: number };

/** What the rows of the equations are called while stamps are written. */
export interface Rows {
  readonly rowOf: ReadonlyMap<string, number>;
  readonly unknownCount: number;
  readonly knownBy: Int32Array;
  readonly signs: Float64Array;
  readonly symmetric: boolean;
}

/**
 * The nodal equations, one for each node of unknown potential: currents that leave it add to 0. A term y (v_b - v_a) of
 * a known potential goes to the right-hand side.
 */
export function stampProgram(branches: readonly Branch[], rows: Rows, slots: PairSlots): StampProgram {
  const entries = new Map<number, { slot: number; sign: number; admittances: number[]; constants: Constant[] }>();
  const excitations: number[] = [];

  /** Adds sign × the branch's value (admittance, gyration or conductance) to the entry. */
  const enter = (slot: number, branch: number, sign: number): void => {
    const entry = entries.get(slot) ?? { slot, sign: 1, admittances: [], constants: [] };
    entries.set(slot, entry);
    if (branches[branch]!.kind !== 'admittance') entry.constants.push({ branch, sign });
    else {
      // All of them lie between the same two nodes, or all at one, so their signs are one.
      entry.sign = sign;
      entry.admittances.push(branch);
    }
  };

  /** The current value × v(node) leaves node `at`. */
  const term = (at: string, node: string, branch: number, value: number): void => {
    const row = rows.rowOf.get(at)!;
    if (at === RETURN || node === RETURN || row >= rows.unknownCount) return;
    const sign = value * rows.signs[row]!;
    const column = rows.rowOf.get(node)!;
    if (column >= rows.unknownCount) {
      excitations.push(row, branch, rows.knownBy[column - rows.unknownCount]!, -sign);
    } else if (row === column) {
      enter(row, branch, sign);
    } else if (row < column) {
      enter(slots.upper(row, column), branch, sign);
    } else if (!rows.symmetric) {
      enter(slots.lower(column, row), branch, sign);
    }
  };

  branches.forEach((branch, index) => {
    if (branch.kind === 'gyrator') {
      for (const i of [0, 1] as const) {
        for (const j of [0, 1] as const) {
          const value = i === j ? 1 : -1;
          term(branch.primary[i], branch.secondary[j], index, value);
          term(branch.secondary[i], branch.primary[j], index, -value);
        }
      }
      return;
    }
    const [a, b] = branch.nodes;
    if (a === b || (branch.kind === 'source' && branch.resistanceOhm === 0)) return;
    term(a, a, index, 1);
    term(b, b, index, 1);
    term(a, b, index, -1);
    term(b, a, index, -1);
    if (branch.kind !== 'source') return;
    for (const [node, value] of [
      [a, 1],
      [b, -1],
    ] as const) {
      const row = rows.rowOf.get(node)!;
      if (node !== RETURN && row < rows.unknownCount) excitations.push(row, index, index, value * rows.signs[row]!);
    }
  });
  // Entries that only fill-in reaches begin at 0 like all others.
  const all = Array.from(
    { length: slots.count },
    (_, slot): StampEntry => entries.get(slot) ?? { slot, sign: 1, admittances: [], constants: [] },
  );
  return { entries: all, excitations: Int32Array.from(excitations) };
}

import type { QuantityKind } from './quantityKind.ts';
import { tidyText } from './tidyText.ts';
import { UNIT_TABLE, type UnitEntry } from './unitTable.ts';

// Maps throughout: a typed `constructor` or `__proto__` finds nothing.
const own = new Map<QuantityKind, Map<string, UnitEntry>>();
const anywhere = new Map<string, { readonly kind: QuantityKind; readonly entry: UnitEntry }>();
for (const [kind, entries] of Object.entries(UNIT_TABLE) as [QuantityKind, readonly UnitEntry[]][]) {
  const names = new Map<string, UnitEntry>();
  for (const entry of entries) {
    for (const name of [tidyText(entry.symbol), ...entry.names]) {
      names.set(name, entry);
      if (!anywhere.has(name)) anywhere.set(name, { kind, entry });
    }
    for (const name of entry.shorthand) names.set(name, entry);
  }
  own.set(kind, names);
}

const isMilliOrMega = (name: string): boolean => /^m/i.test(name);

/**
 * Finds a unit by its spelling (tidied) among those of one kind: letter for letter, else with upper and lower case alike
 * where a single unit fits and no milli can be taken for mega. undefined when there is none.
 *
 * Example: `findUnit('uf', 'capacitance')?.symbol` is 'µF', `findUnit('MH', 'inductance')` is undefined.
 */
export function findUnit(name: string, kind: QuantityKind): UnitEntry | undefined {
  const names = own.get(kind);
  if (names === undefined) throw new RangeError(`No such kind of quantity: ${kind}`);
  const exact = names.get(name);
  if (exact !== undefined || isMilliOrMega(name)) return exact;
  const alike = new Set([...names].filter(([known]) => known.toLowerCase() === name.toLowerCase()).map(([, e]) => e));
  return alike.size === 1 ? [...alike][0] : undefined;
}

/** Finds a unit of any kind by its exact spelling, with the kind it belongs to. */
export const findUnitAnywhere = (name: string) => anywhere.get(name);

/** The units that a field of this kind takes, by their symbols; the first is the one used inside. */
export const unitsOf = (kind: QuantityKind): readonly string[] => UNIT_TABLE[kind].map((entry) => entry.symbol);

/** The unit that a caller names; an unknown one is the caller's bug and throws. */
export function requireUnit(symbol: string, kind: QuantityKind): UnitEntry {
  const entry = findUnit(tidyText(symbol), kind);
  if (entry === undefined) throw new RangeError(`A ${kind} has no unit "${symbol}".`);
  return entry;
}

/**
 * Typed number to inside value. A power of ten is applied to the digits, so that 6.8 µF is the number nearest to 6.8e-6.
 */
export function toInside(numberText: string, entry: UnitEntry): number {
  const power = Math.round(Math.log10(entry.factor));
  const typed = Number(numberText);
  if (entry.offset !== 0) return typed * entry.factor + entry.offset;
  if (Number(`1e${power}`) !== entry.factor) return typed * entry.factor;
  const [digits, exponent = '0'] = numberText.toLowerCase().split('e');
  return Number(`${digits}e${Number(exponent) + power}`);
}

/** Inside value to the number that is shown with this unit. */
export const fromInside = (value: number, entry: UnitEntry): number => (value - entry.offset) / entry.factor;

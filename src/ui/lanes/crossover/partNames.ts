import { RETURN } from '../../../core/circuit/branch.ts';
import type { Part, PartKind } from '../../../core/circuit/part.ts';
import type { Driver } from '../../../core/document/schema.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { figureText } from '../figureText.ts';

/** What the kinds of parts are called. */
export const KIND_WORDS: Readonly<Record<PartKind, string>> = {
  resistor: 'resistor',
  capacitor: 'capacitor',
  inductor: 'coil',
  jumper: 'link',
  speaker: 'speaker',
  amplifier: 'amplifier',
};

/** A node as people call it: node 0 is the return. */
export const nodeWords = (node: string): string => (node === RETURN ? 'return' : node);

/** The one value that a part is called by, as text; empty for parts without one. */
export function mainValueText(part: Part, system: UnitSystem): string {
  switch (part.kind) {
    case 'resistor':
      return figureText(part.ohm, 'resistance', system);
    case 'capacitor':
      return figureText(part.farad, 'capacitance', system);
    case 'inductor':
      return figureText(part.henry, 'inductance', system);
    default:
      return '';
  }
}

/** A part in words with where it stands: "C1, 6.8 µF, from in to t1". */
export function partName(part: Part, drivers: readonly Driver[], system: UnitSystem): string {
  const [a, b] = part.nodes.map(nodeWords);
  if (part.kind === 'speaker') {
    const driver = drivers.find((candidate) => candidate.id === part.driverId);
    return `${part.id}, ${driver?.name ?? 'speaker'}, plus at ${a}, minus at ${b}`;
  }
  return `${part.id}, ${mainValueText(part, system) || KIND_WORDS[part.kind]}, from ${a} to ${b}`;
}

import { RETURN } from '../branch.ts';
import type { Part, PartKind } from '../part.ts';
import { distinctNames } from './distinctNames.ts';
import { engineeringText, readEngineering } from './engineeringValue.ts';

const LETTERS: Readonly<Record<PartKind, string>> = {
  resistor: 'R',
  capacitor: 'C',
  inductor: 'L',
  jumper: 'J',
  speaker: 'LS',
  amplifier: 'V',
};

/**
 * Writes a network as text that `parseNetlist` reads back to the same parts, values to the last digit. Only names that the
 * notation cannot carry change: ids that do not begin with their kind's letter get it, and names that differ in case
 * alone get a number.
 * @example formatNetlist(project.network.parts)
 */
export function formatNetlist(parts: readonly Part[]): string {
  const idOf = distinctNames();
  const nodeOf = distinctNames(['gnd']);
  nodeOf(RETURN, RETURN);
  const lines = parts.map((part) => {
    const nodes = part.nodes.map((node) => nodeOf(node, node));
    const fields = [idOf(part.id, netlistId(part)), ...nodes, ...valueFields(part)].join(' ');
    const note = part.note.replace(/\s+/g, ' ').trim();
    return note === '' ? fields : `${fields} ; ${note}`;
  });
  return `${lines.join('\n')}\n`;
}

/** The part's id in letters that the notation takes, beginning with those of its kind. */
export function netlistId({ id, kind }: Part): string {
  const plain = id.replace(/[^A-Za-z0-9_.+-]/g, '_');
  const letters = LETTERS[kind];
  const isPlain = plain.toUpperCase().startsWith(letters) && (kind !== 'inductor' || !/^LS/i.test(plain));
  return isPlain ? plain : `${letters}_${plain}`;
}

function valueFields(part: Part): string[] {
  const option = (name: string, value: number): string[] => (value === 0 ? [] : [`${name}=${engineeringText(value)}`]);
  switch (part.kind) {
    case 'resistor':
      return [engineeringText(part.ohm), ...option('rated', part.ratedPowerW ?? 0)];
    case 'capacitor':
      return [engineeringText(part.farad), ...option('esr', part.esrOhm)];
    case 'inductor':
      return [engineeringText(part.henry), ...option('dcr', part.dcrOhm), ...option('tand', part.coreLossTangent)];
    case 'speaker':
      return [quoted(part.driverId)];
    case 'jumper':
    case 'amplifier':
      return [];
  }
}

const quoted = (name: string): string =>
  /^[^\s";=*+.][^\s";=]*$/.test(name) && readEngineering(name, 'henry') === null
    ? name
    : `"${name.replace(/["\r\n]/g, ' ')}"`;

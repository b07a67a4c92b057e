import type { Part } from '../../../core/circuit/part.ts';
import type { Driver } from '../../../core/document/schema.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { figureText } from '../figureText.ts';
import { KIND_WORDS, mainValueText, nodeWords } from './partNames.ts';

/** The kinds in the order in which they are bought, with amplifiers left out. */
const ORDER: readonly Part['kind'][] = ['capacitor', 'inductor', 'resistor', 'jumper', 'speaker'];

/**
 * The parts list as text, tab-separated with a head line, for a spreadsheet or a shop: name, kind, value, what else
 * matters, nodes, note.
 * @example partsList(project.network.parts, project.drivers, 'metric').split('\n')[0]
 */
export function partsList(parts: readonly Part[], drivers: readonly Driver[], system: UnitSystem): string {
  const rows = ORDER.flatMap((kind) => parts.filter((part) => part.kind === kind)).map((part) => [
    part.id,
    KIND_WORDS[part.kind],
    part.kind === 'speaker'
      ? (drivers.find((driver) => driver.id === part.driverId)?.name ?? part.driverId)
      : mainValueText(part, system),
    otherValues(part, system),
    `${nodeWords(part.nodes[0])} to ${nodeWords(part.nodes[1])}`,
    part.note,
  ]);
  return [['name', 'kind', 'value', 'also', 'between', 'note'], ...rows]
    .map((row) => row.map((cell) => cell.replace(/\s+/g, ' ').trim()).join('\t'))
    .join('\n');
}

function otherValues(part: Part, system: UnitSystem): string {
  const ohm = (value: number) => figureText(value, 'resistance', system);
  switch (part.kind) {
    case 'resistor':
      return part.ratedPowerW === null ? '' : `rated ${figureText(part.ratedPowerW, 'power', system)}`;
    case 'capacitor':
      return `ESR ${ohm(part.esrOhm)}`;
    case 'inductor':
      return `DCR ${ohm(part.dcrOhm)}${part.coreLossTangent > 0 ? `, core tan δ ${part.coreLossTangent}` : ', air coil'}`;
    default:
      return '';
  }
}

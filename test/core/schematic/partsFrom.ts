import type { Part } from '../../../src/core/circuit/part.ts';

/** Parts from lines such as `R1 a b`; the letters before the digits say the kind (LS speaker, A amplifier, J jumper). */
export function partsFrom(text: string): Part[] {
  return text
    .trim()
    .split(/\s*\n\s*/)
    .map((line) => partFrom(line));
}

export function partFrom(line: string): Part {
  const [id, from, to] = line.split(/\s+/) as [string, string, string];
  const base = { id, nodes: [from, to] as const, note: '' };
  switch (id.replace(/[^A-Z].*$/, '')) {
    case 'R':
      return { ...base, kind: 'resistor', ohm: 4.7, ratedPowerW: null };
    case 'C':
      return { ...base, kind: 'capacitor', farad: 8.2e-6, esrOhm: 0.02 };
    case 'L':
      return { ...base, kind: 'inductor', henry: 0.47e-3, dcrOhm: 0.3, coreLossTangent: 0 };
    case 'J':
      return { ...base, kind: 'jumper' };
    case 'LS':
      return { ...base, kind: 'speaker', driverId: `driver-${id}` };
    case 'A':
      return { ...base, kind: 'amplifier' };
    default:
      throw new RangeError(`no such part: ${line}`);
  }
}

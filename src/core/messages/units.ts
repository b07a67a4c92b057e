import type { ProblemValues, Wording, WordingByCode } from './problem.ts';

const KINDS: ReadonlyMap<string, readonly [name: string, example: string]> = new Map([
  ['length', ['a length', '18 mm, 3/4 in']],
  ['area', ['an area', '220 cm², 34 in²']],
  ['volume', ['a volume', '24.6 L, 0.87 ft³']],
  ['resistance', ['a resistance', '8.2 Ω, 4R7']],
  ['capacitance', ['a capacitance', '6.8 µF, 2u2']],
  ['inductance', ['an inductance', '0.27 mH']],
  ['frequency', ['a frequency', '43 Hz, 3.15 kHz']],
  ['mass', ['a mass', '18 g, 1.5 lb']],
  ['voltage', ['a voltage', '2.83 V']],
  ['current', ['a current', '8 A']],
  ['power', ['a power', '60 W']],
  ['angle', ['an angle', '30 deg']],
  ['temperature', ['a temperature', '20 °C, 68 °F']],
  ['thermal-resistance', ['a thermal resistance', '3.5 K/W']],
  ['pressure', ['a pressure', '1013 hPa']],
  ['ratio', ['a share', '50 %']],
  ['compliance', ['a compliance', '0.9 mm/N']],
  ['force-factor', ['a force factor', '7.2 T·m']],
  ['mechanical-resistance', ['a mechanical resistance', '1.2 kg/s']],
  ['flow-resistivity', ['a flow resistivity', '5 kPa·s/m²']],
  ['level', ['a level', '−3 dB']],
  ['time', ['a time', '0.5 ms']],
  ['speed', ['a speed', '17 m/s']],
  ['plain', ['a number', '0.707']],
]);
const nameOf = (kind: unknown): string => KINDS.get(String(kind))?.[0] ?? 'something else';
const exampleOf = ({ wanted }: ProblemValues): string => KINDS.get(String(wanted))?.[1] ?? '12.5';
const likeThis = (values: ProblemValues): string => `Type ${nameOf(values.wanted)} like this: ${exampleOf(values)}.`;
const wording = (sentence: string, remedy: string): Wording => ({ sentence, remedy });

/** Sentences of the codes that begin with `units.`: what a person typed into a field for a quantity. */
export const unitsWording: WordingByCode = {
  'units.empty': (v) => wording(`Nothing is typed where ${nameOf(v.wanted)} belongs.`, likeThis(v)),
  'units.not-understood': (v) => wording(`“${v.text}” cannot be read as ${nameOf(v.wanted)}.`, likeThis(v)),
  'units.unknown-unit': (v) => wording(`“${v.unit}” in “${v.text}” is not a unit that this field knows.`, likeThis(v)),
  'units.wrong-kind': (v) =>
    wording(`“${v.text}” is ${nameOf(v.found)}, but this field takes ${nameOf(v.wanted)}.`, likeThis(v)),
  'units.mixed-units': (v) =>
    wording(
      `“${v.text}” adds numbers with a unit to numbers without one, or units that do not go together.`,
      'Write a unit of the same kind after every number, or after none.',
    ),
  'units.ambiguous-comma': (v) =>
    wording(
      `“${v.text}” can be read with a decimal comma or with a comma between thousands.`,
      `Write ${String(v.text).replace(',', '.')} or ${String(v.text).replace(',', '')}.`,
    ),
  'units.not-finite': (v) =>
    wording(
      `“${v.text}” does not give a number, or one too large to hold.`,
      'Look for a division by zero or a slip in the exponent.',
    ),
  'units.too-long': (v) =>
    wording(`${v.length} characters are more than this field reads.`, 'Type at most 64 characters.'),
  'units.too-deep': (v) =>
    wording(`“${v.text}” has brackets more than four deep.`, 'Work out the inner part first, or use fewer brackets.'),
};

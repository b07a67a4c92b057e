import { type Problem, problem, type Result, succeed } from '../../messages/problem.ts';
import type { Part } from '../part.ts';
import { type NetlistUnit, readEngineering } from './engineeringValue.ts';
import { excerpt, type NetlistLine } from './netlistLines.ts';

const LONGEST_NOTE = 200;
const NODE = /^[A-Za-z0-9_.+-]{1,32}$/;

interface Option {
  readonly unit: NetlistUnit;
  readonly field: 'dcrOhm' | 'coreLossTangent' | 'esrOhm' | 'ratedPowerW';
}
interface Kind {
  readonly kind: Part['kind'];
  readonly unit?: NetlistUnit;
  readonly options: Readonly<Record<string, Option>>;
}

const dcr: Option = { unit: 'ohm', field: 'dcrOhm' };
const KINDS: readonly (readonly [RegExp, Kind])[] = [
  [/^LS/i, { kind: 'speaker', options: {} }],
  [/^L/i, { kind: 'inductor', unit: 'henry', options: { dcr, tand: { unit: 'none', field: 'coreLossTangent' } } }],
  [/^C/i, { kind: 'capacitor', unit: 'farad', options: { esr: { unit: 'ohm', field: 'esrOhm' } } }],
  [/^R/i, { kind: 'resistor', unit: 'ohm', options: { rated: { unit: 'watt', field: 'ratedPowerW' } } }],
  [/^J/i, { kind: 'jumper', options: {} }],
  [/^V/i, { kind: 'amplifier', options: {} }],
];

/**
 * Reads one statement. Its first letter tells the kind of part: `R C L J V`, and `LS` for a speaker. A comment behind the
 * statement becomes the part's note (its first 200 characters).
 */
export function netlistPart({ line, tokens, comment }: NetlistLine): Result<Part> {
  const at = { kind: 'line', line } as const;
  const [id = '', first, second, ...rest] = tokens;
  const kind = KINDS.find(([pattern]) => pattern.test(id))?.[1];
  if (kind === undefined) return refuse('unknown-line', { text: excerpt(tokens.join(' ')) });
  const wanted = kind.kind === 'speaker' ? 'two nodes and a driver’s name' : 'two nodes and a value';
  if (first === undefined || second === undefined) {
    return refuse('too-short', { part: id, wanted: kind.unit || kind.kind === 'speaker' ? wanted : 'two nodes' });
  }
  const badNode = [first, second].find((node) => !NODE.test(node));
  if (badNode !== undefined) return refuse('node', { part: id, text: excerpt(badNode) });
  const base = { id, nodes: [first, second], note: comment.slice(0, LONGEST_NOTE) } as const;

  if (kind.kind === 'jumper' || kind.kind === 'amplifier') {
    if (rest.length > 0) return refuse('extra', { part: id, text: excerpt(rest.join(' ')) });
    return succeed({ ...base, kind: kind.kind });
  }
  const [main, ...options] = rest;
  if (main === undefined) return refuse('too-short', { part: id, wanted });
  if (kind.kind === 'speaker') {
    const driverId = main.replace(/^"(.*)"$/, '$1');
    if (options.length > 0) return refuse('extra', { part: id, text: excerpt(options.join(' ')) });
    if (driverId === '' || driverId === '"') return refuse('too-short', { part: id, wanted });
    if (main === driverId && readEngineering(main, 'henry') !== null) {
      return refuse('speaker-value', { part: id, text: main });
    }
    return succeed({ ...base, kind: 'speaker', driverId });
  }

  const problems: Problem[] = [];
  const value = readEngineering(main, kind.unit!);
  if (value === null) problems.push(problem('circuit.netlist-value', at, { part: id, text: excerpt(main) }));
  else if (value < 0 || (value === 0 && kind.kind !== 'resistor')) {
    problems.push(problem('circuit.netlist-range', at, { part: id, text: excerpt(main) }));
  }
  const fields: Partial<Record<Option['field'], number>> = {};
  for (const token of options) {
    const [name = '', text] = token.split('=');
    const option = Object.hasOwn(kind.options, name.toLowerCase()) ? kind.options[name.toLowerCase()] : undefined;
    const given = option === undefined || text === undefined ? null : readEngineering(text, option.unit);
    const least = option?.field === 'ratedPowerW' ? Number.MIN_VALUE : 0;
    if (option === undefined || given === null || given < least || option.field in fields) {
      problems.push(problem('circuit.netlist-option', at, { part: id, text: excerpt(token) }));
    } else fields[option.field] = given;
  }
  if (problems.length > 0 || value === null) return { ok: false, problems };
  return succeed(valuedPart(kind.kind, base, value, fields));

  function refuse(what: string, values: Record<string, string>): Result<Part> {
    return { ok: false, problems: [problem(`circuit.netlist-${what}`, at, values)] };
  }
}

function valuedPart(
  kind: 'inductor' | 'capacitor' | 'resistor',
  base: Pick<Part, 'id' | 'nodes' | 'note'>,
  value: number,
  { dcrOhm = 0, coreLossTangent = 0, esrOhm = 0, ratedPowerW }: Partial<Record<Option['field'], number>>,
): Part {
  switch (kind) {
    case 'inductor':
      return { ...base, kind, henry: value, dcrOhm, coreLossTangent };
    case 'capacitor':
      return { ...base, kind, farad: value, esrOhm };
    case 'resistor':
      return { ...base, kind, ohm: value, ratedPowerW: ratedPowerW ?? null };
  }
}

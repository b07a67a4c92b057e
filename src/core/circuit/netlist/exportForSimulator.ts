import { type Problem, problem } from '../../messages/problem.ts';
import { RETURN } from '../branch.ts';
import type { CoilValues } from '../branches/coil.ts';
import { LEAST_OHM } from '../branches/leastOhm.ts';
import type { Part } from '../part.ts';
import { distinctNames } from './distinctNames.ts';
import { netlistId } from './formatNetlist.ts';
import { semiInductanceLadder } from './semiInductanceLadder.ts';

/** A driver as electrical elements: its coil, then mass, losses and compliance as a parallel C, R and L. */
export interface DriverEquivalent extends CoilValues {
  readonly motional: { readonly ohm: number; readonly farad: number; readonly henry: number } | null;
}

export interface SimulatorExport {
  readonly title: string;
  readonly amplifiers: readonly { readonly id: string; readonly voltageV: number; readonly resistanceOhm: number }[];
  /** By driver id; a driver that is missing here is written as a comment. */
  readonly drivers: ReadonlyMap<string, DriverEquivalent>;
  /** The sweep that the text asks for, and the band in which a semi-inductance's ladder is to follow it. */
  readonly lowHz: number;
  readonly highHz: number;
}

/**
 * Writes a network for a general circuit simulator in that simulator's own plain elements: series resistances and drivers
 * become R, L and C of their own with fresh inner nodes. What plain elements cannot carry is a comment in the text and
 * a remark: a core's loss tangent, drivers without equivalents, semi-inductances with exponents outside 0 to 1.
 * @example exportForSimulator(parts, { title, amplifiers, drivers, lowHz: 10, highHz: 20000 }).text
 */
export function exportForSimulator(
  parts: readonly Part[],
  options: SimulatorExport,
): { readonly text: string; readonly remarks: readonly Problem[] } {
  const writer = new Writer(parts);
  for (const part of parts) writer.part(part, options);
  const sweep = `.ac dec 48 ${number(options.lowHz)} ${number(options.highHz)}`;
  const title = `* ${options.title.replace(/\s+/g, ' ').trim()}`;
  return { text: [title, ...writer.lines, sweep, '.end', ''].join('\n'), remarks: writer.remarks };
}

const number = (x: number): string => String(x);
const plain = (name: string): string => name.replace(/[^A-Za-z0-9_]/g, '_');

class Writer {
  readonly lines: string[] = [];
  readonly remarks: Problem[] = [];
  private readonly nodeOf = distinctNames(['gnd']);
  private readonly idOf = distinctNames();

  constructor(parts: readonly Part[]) {
    this.nodeOf(RETURN, RETURN);
    // Names in use come first; inner nodes and elements get what is left.
    for (const { nodes } of parts) for (const node of nodes) this.nodeOf(node, plain(node));
    for (const part of parts) this.idOf(part.id, plain(netlistId(part)));
  }

  part(part: Part, options: SimulatorExport): void {
    const [a, b] = [this.nodeOf(part.nodes[0], ''), this.nodeOf(part.nodes[1], '')];
    const id = this.idOf(part.id, '');
    switch (part.kind) {
      case 'resistor':
        this.element(id, a, b, Math.max(part.ohm, LEAST_OHM));
        break;
      case 'jumper':
        this.element(this.fresh('R', id), a, b, LEAST_OHM);
        break;
      case 'capacitor':
        this.chain(a, b, [[id, part.farad], ...this.resistance(id, part.esrOhm)]);
        break;
      case 'inductor':
        if (part.coreLossTangent > 0) {
          this.comment(`${id}: the loss tangent ${number(part.coreLossTangent)} of its core is left out`);
          this.remark('export-core-loss', part.id, { tangent: part.coreLossTangent });
        }
        this.chain(a, b, [[id, part.henry], ...this.resistance(id, part.dcrOhm)]);
        break;
      case 'amplifier': {
        const amplifier = options.amplifiers.find((one) => one.id === part.id);
        if (amplifier === undefined) throw new RangeError(`The export was given no settings of amplifier ${part.id}.`);
        this.chain(a, b, [
          ...this.resistance(id, amplifier.resistanceOhm),
          [id, `DC 0 AC ${number(amplifier.voltageV)}`],
        ]);
        break;
      }
      case 'speaker': {
        const driver = options.drivers.get(part.driverId);
        if (driver !== undefined) {
          this.driver(id, a, b, driver, options);
          break;
        }
        this.comment(`${id} ${a} ${b}: driver without equivalent elements`);
        this.remark('export-driver', part.id, {});
      }
    }
  }

  private driver(id: string, a: string, b: string, driver: DriverEquivalent, options: SimulatorExport): void {
    const { reOhm, leH, semiInductance, motional } = driver;
    const inner = motional === null ? b : this.freshNode(`${id}_emf`);
    const series: [string, number][] = [[this.fresh('R', `${id}_coil`), reOhm]];
    const ladder = semiInductance === null ? null : semiInductanceLadder(semiInductance, options.lowHz, options.highHz);
    const henry = leH + (ladder?.seriesHenry ?? 0);
    if (henry > 0) series.push([this.fresh('L', `${id}_coil`), henry]);
    if (semiInductance !== null) {
      const { kOhmSn, exponent } = semiInductance;
      const what = `${id}: semi-inductance K = ${number(kOhmSn)} ohm s^n, n = ${number(exponent)}`;
      if (ladder === null) {
        this.comment(`${what} is left out`);
        this.remark('export-semi-inductance', id, { exponent });
      } else {
        const error = (100 * ladder.greatestError).toPrecision(2);
        this.comment(`${what} as ${ladder.sections.length} sections, at most ${error} % off`);
        series.push([this.fresh('R', `${id}_semi`), ladder.seriesOhm]);
      }
    }
    const sections = ladder?.sections ?? [];
    const beforeLadder = sections.length === 0 ? inner : this.freshNode(`${id}_s0`);
    this.chain(a, beforeLadder, series);
    let at = beforeLadder;
    sections.forEach(({ ohm, henry: sectionHenry }, i) => {
      const next = i === sections.length - 1 ? inner : this.freshNode(`${id}_s${i + 1}`);
      this.element(this.fresh('R', `${id}_s${i + 1}`), at, next, ohm);
      this.element(this.fresh('L', `${id}_s${i + 1}`), at, next, sectionHenry);
      at = next;
    });
    if (motional === null) return;
    this.element(this.fresh('R', `${id}_m`), inner, b, motional.ohm);
    this.element(this.fresh('C', `${id}_m`), inner, b, motional.farad);
    this.element(this.fresh('L', `${id}_m`), inner, b, motional.henry);
  }

  private resistance(id: string, ohm: number): [string, number][] {
    return ohm === 0 ? [] : [[this.fresh('R', id), ohm]];
  }

  private chain(a: string, b: string, elements: readonly (readonly [string, number | string])[]): void {
    let at = a;
    elements.forEach(([id, value], i) => {
      const next = i === elements.length - 1 ? b : this.freshNode(`${elements[0]![0]}_${i + 1}`);
      this.element(id, at, next, value);
      at = next;
    });
  }

  private element(id: string, a: string, b: string, value: number | string): void {
    this.lines.push(`${id} ${a} ${b} ${value}`);
  }

  private comment(text: string): void {
    this.lines.push(`* ${text}`);
  }

  private remark(what: string, id: string, values: Record<string, number>): void {
    this.remarks.push(problem(`circuit.${what}`, { kind: 'part', id }, { part: id, ...values }));
  }

  private fresh(letter: string, wish: string): string {
    const name = `${letter}_${wish}`;
    return this.idOf(`element ${name}`, name);
  }

  private freshNode(wish: string): string {
    return this.nodeOf(`inner ${wish}`, wish);
  }
}

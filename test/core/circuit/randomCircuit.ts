import fc from 'fast-check';
import { capacitor, gyrator, inductor, resistor, source } from '../../../src/core/circuit/branches/index.ts';
import type { Branch } from '../../../src/core/circuit/index.ts';

/** An element as plain data, from which both our branch and a simulator's lines are made. */
export type Element =
  | { kind: 'R'; nodes: [string, string]; ohm: number }
  | { kind: 'L'; nodes: [string, string]; henry: number; dcrOhm: number }
  | { kind: 'C'; nodes: [string, string]; farad: number; esrOhm: number }
  | { kind: 'G'; primary: [string, string]; secondary: [string, string]; gyrationS: number }
  | { kind: 'V'; nodes: [string, string]; voltageV: number; resistanceOhm: number };

export const branchesOf = (elements: readonly Element[]): Branch[] =>
  elements.map((e, i) => branchOfElement(e, `${e.kind}${i}`));

function branchOfElement(e: Element, id: string): Branch {
  switch (e.kind) {
    case 'R':
      return resistor(id, e.nodes, e.ohm);
    case 'L':
      return inductor(id, e.nodes, { henry: e.henry, dcrOhm: e.dcrOhm, coreLossTangent: 0 });
    case 'C':
      return capacitor(id, e.nodes, e);
    case 'G':
      return gyrator(id, e.primary, e.secondary, e.gyrationS);
    case 'V':
      return source(id, e.nodes, e.voltageV, e.resistanceOhm);
  }
}

/** Lines for a general circuit simulator; series resistances and sources' resistances are elements of their own. */
export const simulatorLines = (elements: readonly Element[]): string[] =>
  elements.flatMap((e, i) => linesOfElement(e, i));

const text = (x: number): string => x.toExponential(16);

function linesOfElement(e: Element, i: number): string[] {
  const series = (letter: string, nodes: [string, string], value: number, ohm: number): string[] =>
    ohm === 0
      ? [`${letter}${i} ${nodes[0]} ${nodes[1]} ${text(value)}`]
      : [`${letter}${i} ${nodes[0]} s${i} ${text(value)}`, `R${i}s s${i} ${nodes[1]} ${text(ohm)}`];
  switch (e.kind) {
    case 'R':
      return [`R${i} ${e.nodes[0]} ${e.nodes[1]} ${text(e.ohm)}`];
    case 'L':
      return series('L', e.nodes, e.henry, e.dcrOhm);
    case 'C':
      return series('C', e.nodes, e.farad, e.esrOhm);
    case 'G':
      return [
        `G${i}a ${e.primary.join(' ')} ${e.secondary.join(' ')} ${text(e.gyrationS)}`,
        `G${i}b ${e.secondary.join(' ')} ${e.primary.join(' ')} ${text(-e.gyrationS)}`,
      ];
    case 'V':
      return e.resistanceOhm === 0
        ? [`V${i} ${e.nodes[0]} ${e.nodes[1]} DC 0 AC ${text(e.voltageV)}`]
        : [
            `V${i} s${i} ${e.nodes[1]} DC 0 AC ${text(e.voltageV)}`,
            `R${i}s s${i} ${e.nodes[0]} ${text(e.resistanceOhm)}`,
          ];
  }
}

const logBetween = (low: number, high: number): fc.Arbitrary<number> =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);
const orZero = (value: fc.Arbitrary<number>): fc.Arbitrary<number> => fc.oneof(fc.constant(0), value);

/**
 * Circuits of 5 to 40 parts in which every node hangs on the return: part k of the first ones joins node k to an earlier
 * node, the rest lie anywhere. One source, sometimes with a resistance; sometimes gyrators to nodes of their own.
 */
export const randomCircuit: fc.Arbitrary<Element[]> = fc
  .integer({ min: 2, max: 16 })
  .chain((nodeCount) => circuitOf(nodeCount, { minLength: Math.max(0, 5 - nodeCount), maxLength: 22 }, 2));

/** The same with 5 to 40 parts, every number of them as likely. */
export const circuitOfAnySize: fc.Arbitrary<Element[]> = fc
  .integer({ min: 5, max: 40 })
  .chain((size) =>
    fc.tuple(fc.constant(size), fc.integer({ min: 2, max: Math.min(16, size) }), fc.integer({ min: 0, max: 2 })),
  )
  .chain(([size, nodeCount, most]) => {
    const motors = Math.min(most, Math.floor((size - nodeCount) / MOTOR_PARTS));
    const length = size - nodeCount - MOTOR_PARTS * motors;
    return circuitOf(nodeCount, { minLength: length, maxLength: length }, motors, motors);
  });

const MOTOR_PARTS = 3;

function circuitOf(
  nodeCount: number,
  others: { readonly minLength: number; readonly maxLength: number },
  mostMotors: number,
  leastMotors = 0,
): fc.Arbitrary<Element[]> {
  const name = (i: number): string => (i === 0 ? '0' : `n${i}`);
  const earlier = (k: number): fc.Arbitrary<[string, string]> =>
    fc.integer({ min: 0, max: k - 1 }).map((j) => [name(k), name(j)]);
  const anywhere: fc.Arbitrary<[string, string]> = fc
    .tuple(fc.integer({ min: 0, max: nodeCount }), fc.integer({ min: 1, max: nodeCount }))
    .map(([a, step]) => [name(a), name((a + step) % (nodeCount + 1))]);
  const part = (nodes: fc.Arbitrary<[string, string]>): fc.Arbitrary<Element> =>
    fc.oneof(
      fc.record({ kind: fc.constant('R' as const), nodes, ohm: logBetween(0.1, 1000) }),
      fc.record({
        kind: fc.constant('L' as const),
        nodes,
        henry: logBetween(1e-5, 3e-2),
        dcrOhm: orZero(logBetween(0.05, 2)),
      }),
      fc.record({
        kind: fc.constant('C' as const),
        nodes,
        farad: logBetween(1e-7, 1e-3),
        esrOhm: orZero(logBetween(0.01, 1)),
      }),
    );
  const tree = fc.tuple(...Array.from({ length: nodeCount - 1 }, (_, i) => part(earlier(i + 2))));
  const rest = fc.array(part(anywhere), others);
  const drive: fc.Arbitrary<Element> = fc.record({
    kind: fc.constant('V' as const),
    nodes: fc.constant(['n1', '0'] as [string, string]),
    voltageV: fc.constantFrom(1, 2.83),
    resistanceOhm: orZero(logBetween(0.01, 10)),
  });
  // Each motor: a moving side of its own (mass, loss, compliance to still air), joined to two electrical nodes.
  const motor = fc
    .record({ at: anywhere, gyrationS: logBetween(1e-3, 1), mass: logBetween(1e-3, 1), loss: logBetween(0.1, 1e3) })
    .map(({ at, gyrationS, mass, loss }) => (i: number): Element[] => [
      { kind: 'G', primary: at, secondary: [`m${i}`, '0'], gyrationS },
      { kind: 'R', nodes: [`m${i}`, '0'], ohm: loss },
      { kind: 'C', nodes: [`m${i}`, '0'], farad: mass / 1e4, esrOhm: 0 },
    ]);
  return fc
    .tuple(drive, tree, rest, fc.array(motor, { minLength: leastMotors, maxLength: mostMotors }))
    .map(([v, t, r, motors]) => [v, ...t, ...r, ...motors.flatMap((make, i) => make(i))]);
}

/** A sweep of `count` frequencies spaced evenly on the logarithm. */
export const logOmegas = (lowHz: number, highHz: number, count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => 2 * Math.PI * lowHz * (highHz / lowHz) ** (i / (count - 1)));

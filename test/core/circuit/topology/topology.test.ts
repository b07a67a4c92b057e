import { describe, expect, it } from 'vitest';
import {
  type Branch,
  capacitor,
  compileCircuit,
  gyrator,
  jumper,
  resistor,
  retabulate,
  solveCircuit,
  source,
  tabulateAdmittances,
} from '../../../../src/core/circuit/index.ts';
import { wordedCodes } from '../../../../src/core/messages/index.ts';
import { succeeded } from '../solved.ts';

const problemsOf = (...branches: Branch[]) => {
  const result = compileCircuit(branches);
  return result.ok ? [] : result.problems.map((p) => [p.code.replace('circuit.', ''), p.place.id]);
};
const V1 = source('V1', ['in', '0'], 2.83, 0);
const R = (id: string, a: string, b: string) => resistor(id, [a, b], 8);

describe('floating nodes', () => {
  it('names one node for each island that hangs on nothing', () => {
    expect(problemsOf(V1, R('R1', 'in', '0'), R('R2', 'x', 'y'), R('R3', 'y', 'z'), R('R4', 'p', 'p'))).toEqual([
      ['floating-node', 'x'],
      ['floating-node', 'p'],
    ]);
  });

  it('lets ends dangle', () => {
    const compiled = succeeded(compileCircuit([V1, R('R1', 'in', 'a'), R('R2', 'a', 'open'), R('R3', 'a', '0')]));
    const solution = succeeded(solveCircuit(compiled, tabulateAdmittances(compiled, Float64Array.of(1000))));
    expect(solution.potential('open').re[0]).toBeCloseTo(1.415, 12);
  });

  const cone: Branch[] = [
    R('Re', 'plus', 'emf'),
    gyrator('motor', ['emf', 'minus'], ['cone', '0'], 0.01),
    capacitor('Cm', ['cone', '0'], { farad: 1e-6, esrOhm: 0 }),
  ];
  it('lets a driver with one lead off take its back-emf', () => {
    expect(problemsOf(V1, R('R1', 'in', 'minus'), ...cone)).toEqual([]);
    expect(problemsOf(V1, R('R1', 'in', 'plus'), ...cone)).toEqual([]);
  });

  it('names the node of a driver with both leads off', () => {
    const [[code, node] = []] = problemsOf(V1, R('R1', 'in', '0'), ...cone);
    expect(code).toBe('floating-node');
    expect(['plus', 'emf', 'minus']).toContain(node);
  });

  it('follows gyrators: the inner node of two in a row is held, a loose far side is not', () => {
    const inner = gyrator('G1', ['in', '0'], ['m', '0'], 0.1);
    expect(problemsOf(V1, inner, gyrator('G2', ['m', '0'], ['x', '0'], 0.1), R('R1', 'x', '0'))).toEqual([]);
    expect(problemsOf(V1, inner)).toEqual([['floating-node', 'm']]);
    expect(problemsOf(V1, gyrator('G1', ['in', '0'], ['m', 'n'], 0.1), R('R1', 'm', 'n'))).toEqual([
      ['floating-node', 'm'],
    ]);
  });

  it('agrees with the solver on which circuits of gyrators can be solved', () => {
    // The same pair twice with equal ratios cancels; with other ratios it does not.
    const twice = (second: number): Branch[] => [
      V1,
      R('R1', 'in', 'a'),
      gyrator('G1', ['a', '0'], ['m', '0'], 0.1),
      gyrator('G2', ['a', '0'], ['0', 'm'], second),
    ];
    expect(problemsOf(...twice(0.1))).toEqual([['floating-node', 'm']]);
    expect(problemsOf(...twice(0.2))).toEqual([]);
    const compiled = succeeded(compileCircuit(twice(0.2)));
    expect(solveCircuit(compiled, tabulateAdmittances(compiled, Float64Array.of(1))).ok).toBe(true);
  });
});

describe('sources', () => {
  it('names sources that drive one node, that stand off the return, or whose ends are one node', () => {
    const load = R('R1', 'in', '0');
    expect(problemsOf(V1, source('V2', ['in', '0'], 1, 0), load)).toEqual([['source-loop', 'V2']]);
    expect(problemsOf(V1, source('V2', ['a', 'in'], 1, 0), R('R2', 'a', '0'))).toEqual([['source-off-return', 'V2']]);
    expect(problemsOf(source('V2', ['in', 'in'], 1, 0), load)).toEqual([['source-shorted', 'V2']]);
    expect(problemsOf(V1, source('V2', ['in', '0'], 1, 0.1), load)).toEqual([]);
    expect(problemsOf(source('V2', ['a', 'b'], 1, 0.1), R('R1', 'a', '0'), R('R2', 'b', '0'))).toEqual([]);
  });

  it('names the chain that joins the terminals, and no link that only hangs on it', () => {
    const named = (...branches: Branch[]): unknown => {
      const compiled = compileCircuit(branches);
      return compiled.ok ? null : compiled.problems.map((p) => p.values.by);
    };
    const load = [R('R1', 'x', '0'), R('R2', 'in', '0')];
    const hanging = jumper('J1', ['in', 'x']);
    expect(named(V1, hanging, jumper('J9', ['in', '0']), ...load)).toEqual(['J9']);
    const detour = [jumper('J2', ['in', 'a']), jumper('J3', ['a', '0'])];
    expect(named(V1, hanging, ...detour, ...load)).toEqual(['J2, J3']);
    expect(named(V1, hanging, ...detour, jumper('J9', ['0', 'in']), ...load)).toEqual(['J9']);
    expect(named(V1, hanging, ...load)).toBeNull();
  });

  it('finds a short over several links and tiny resistances, with and without source resistance', () => {
    const shorts = [jumper('J1', ['in', 'a']), resistor('R1', ['a', 'b'], 0), jumper('J2', ['b', '0'])];
    expect(problemsOf(V1, ...shorts)).toEqual([['source-shorted', 'V1']]);
    expect(problemsOf(source('V1', ['in', '0'], 1, 0.1), ...shorts)).toEqual([['source-shorted', 'V1']]);
    expect(problemsOf(V1, ...shorts.slice(0, 2), R('R2', 'b', '0'))).toEqual([]);
  });
});

describe('ids and remarks', () => {
  it('names what has the same id', () => {
    expect(problemsOf(V1, R('R1', 'in', '0'), R('R1', 'in', '0'))).toEqual([['duplicate-id', 'R1']]);
  });

  it('remarks on branches without current and on raised resistances, and solves them', () => {
    const compiled = succeeded(
      compileCircuit([V1, R('R1', 'in', '0'), R('R2', 'in', 'in'), resistor('R3', ['in', 'a'], 0), R('R4', 'a', '0')]),
    );
    expect(compiled.remarks.map((p) => [p.code, p.place.id])).toEqual([
      ['circuit.both-ends-on-one-node', 'R2'],
      ['circuit.resistance-floored', 'R3'],
    ]);
    const solution = succeeded(solveCircuit(compiled, tabulateAdmittances(compiled, Float64Array.of(1))));
    expect(solution.potential('a').re[0]).toBeCloseTo((2.83 * 8) / 8.001, 12);
  });

  it('has a sentence for every code', () => {
    const codes = ['duplicate-id', 'source-off-return', 'source-loop', 'source-shorted', 'floating-node', 'singular'];
    const remarks = ['not-finite', 'both-ends-on-one-node', 'resistance-floored'];
    for (const code of [...codes, ...remarks]) expect(wordedCodes()).toContain(`circuit.${code}`);
  });
});

describe('compileCircuit with an earlier circuit', () => {
  const load = (id: string, node: string, ohm: number) => resistor(id, [node, '0'], ohm);
  it('keeps the programs where only values change, and starts anew where the topology does', () => {
    const first = succeeded(compileCircuit([V1, R('R1', 'in', 'a'), load('R2', 'a', 4)]));
    const second = succeeded(compileCircuit([V1, R('R1', 'in', 'a'), load('R2', 'a', 8)], first));
    expect(second.elimination).toBe(first.elimination);
    const solution = succeeded(solveCircuit(second, tabulateAdmittances(second, Float64Array.of(1))));
    expect(solution.potential('a').re[0]).toBeCloseTo(1.415, 12);
    for (const other of [
      [V1, R('R1', 'in', 'a'), load('R2', 'a', 0)],
      [V1, R('R1', 'in', 'b'), load('R2', 'b', 4)],
      [V1, R('R1', 'in', 'a'), load('R3', 'a', 4)],
      [source('V1', ['in', '0'], 1, 1), R('R1', 'in', 'a'), load('R2', 'a', 4)],
      [V1, R('R1', 'in', 'a'), load('R2', 'a', 4), load('R3', 'a', 4)],
    ]) {
      expect(succeeded(compileCircuit(other, first)).elimination).not.toBe(first.elimination);
    }
  });

  it('tabulates anew only what has changed', () => {
    const [r1, r2] = [R('R1', 'in', 'a'), load('R2', 'a', 4)];
    const omegas = Float64Array.of(1, 2);
    const first = tabulateAdmittances(succeeded(compileCircuit([V1, r1, r2])), omegas);
    const compiled = succeeded(compileCircuit([V1, r1, load('R2', 'a', 8)]));
    const second = tabulateAdmittances(compiled, Float64Array.from(omegas), first);
    expect(second.rows[1]).toBe(first.rows[1]);
    expect(second.rows[2]).not.toBe(first.rows[2]);
    const third = tabulateAdmittances(compiled, Float64Array.of(1, 3), first);
    expect(third.rows[1]).not.toBe(first.rows[1]);
  });

  it('tabulates into old buffers', () => {
    const [r1, r2] = [R('R1', 'in', 'a'), load('R2', 'a', 4)];
    const omegas = Float64Array.of(1, 2);
    const first = tabulateAdmittances(succeeded(compileCircuit([V1, r1, r2])), omegas);
    const compiled = succeeded(compileCircuit([V1, r1, load('R2', 'a', 8)]));
    const second = retabulate(compiled, first);
    expect(second.rows[1]).toBe(first.rows[1]);
    expect(second.rows[2]?.re).toBe(first.rows[2]?.re);
    expect([...second.rows[2]!.re]).toEqual([0.125, 0.125]);
    expect(retabulate(succeeded(compileCircuit([V1, r1, r2, load('R3', 'a', 2)])), second).rows[3]?.re[1]).toBe(0.5);
  });
});

import { describe, expect, it } from 'vitest';
import type { Branch } from '../../../src/core/circuit/branch.ts';
import {
  branchCurrentInto,
  capacitor,
  compileCircuit,
  inductor,
  resistor,
  solveCircuit,
  source,
  tabulateAdmittances,
} from '../../../src/core/circuit/index.ts';

const omegas = Float64Array.from({ length: 30 }, (_, i) => 2 * Math.PI * 20 * 1.3 ** i);
const network: Branch[] = [
  resistor('R1', ['a', 'x'], 4.7),
  inductor('L1', ['x', 'y'], { henry: 1.2e-3, dcrOhm: 0.3, coreLossTangent: 0 }),
  capacitor('C1', ['y', '0'], { farad: 15e-6, esrOhm: 0.02 }),
  capacitor('C2', ['b', 'z'], { farad: 6.8e-6, esrOhm: 0.05 }),
  resistor('R2', ['z', 'y'], 2.2),
  resistor('R3', ['z', '0'], 8),
];
const high = (omega: number) => ({ re: omega ** 2 / (omega ** 2 + 4e6), im: (omega * 2000) / (omega ** 2 + 4e6) });
const low = (omega: number) => ({ re: 9e6 / (9e6 + omega ** 2), im: (-omega * 3000) / (9e6 + omega ** 2) });
const tabulate =
  (f: (omega: number) => { re: number; im: number }) => (all: Float64Array, re: Float64Array, im: Float64Array) => {
    all.forEach((omega, i) => {
      ({ re: re[i], im: im[i] } = f(omega) as { re: number; im: number });
    });
  };

const solved = (branches: readonly Branch[]) => {
  const compiled = compileCircuit(branches);
  if (!compiled.ok) throw new Error('not compiled');
  const solution = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, omegas));
  if (!solution.ok) throw new Error('not solved');
  return solution.value;
};

describe('a source whose voltage varies over the sweep', () => {
  it.each([
    [0, 0],
    [0.4, 0],
    [0, 1.5],
    [0.4, 1.5],
  ])('adds up as two circuits with one constant source each, times its factor (resistances %d and %d)', (ra, rb) => {
    const both = solved([
      { ...source('V1', ['a', '0'], 2.83, ra), drive: tabulate(high) },
      { ...source('V2', ['b', '0'], 1.5, rb), drive: tabulate(low) },
      ...network,
    ]);
    const first = solved([source('V1', ['a', '0'], 2.83, ra), source('V2', ['b', '0'], 0, rb), ...network]);
    const second = solved([source('V1', ['a', '0'], 0, ra), source('V2', ['b', '0'], 1.5, rb), ...network]);
    const current = (solution: typeof both, id: string) => {
      const out = { re: new Float64Array(omegas.length), im: new Float64Array(omegas.length) };
      branchCurrentInto(out, solution, id);
      return out;
    };
    const check = (
      is: { re: Float64Array; im: Float64Array },
      a: { re: Float64Array; im: Float64Array },
      b: { re: Float64Array; im: Float64Array },
      scale: number,
    ) => {
      omegas.forEach((omega, i) => {
        const h = high(omega);
        const l = low(omega);
        const re = a.re[i]! * h.re - a.im[i]! * h.im + b.re[i]! * l.re - b.im[i]! * l.im;
        const im = a.re[i]! * h.im + a.im[i]! * h.re + b.re[i]! * l.im + b.im[i]! * l.re;
        expect(Math.hypot(is.re[i]! - re, is.im[i]! - im)).toBeLessThan(1e-12 * scale);
      });
    };
    for (const node of ['a', 'b', 'x', 'y', 'z']) {
      check(both.potential(node), first.potential(node), second.potential(node), 3);
    }
    for (const id of ['V1', 'V2', 'R1', 'C2']) check(current(both, id), current(first, id), current(second, id), 1);
  });

  it('is solved alike at the exact resonance of a lossless inner node', () => {
    // L and C without loss meet at their resonance: that one frequency goes to the dense solve.
    const at = 1 / Math.sqrt(1e-3 * 10e-6);
    const grid = Float64Array.of(0.5 * at, at, 2 * at);
    const branches = (drive: boolean): Branch[] => [
      { ...source('V1', ['a', '0'], 1, 0), ...(drive && { drive: tabulate(high) }) },
      inductor('L', ['a', 'm'], { henry: 1e-3, dcrOhm: 0, coreLossTangent: 0 }),
      capacitor('C', ['m', '0'], { farad: 10e-6, esrOhm: 0 }),
      resistor('R', ['m', '0'], 8),
    ];
    const run = (drive: boolean) => {
      const compiled = compileCircuit(branches(drive));
      if (!compiled.ok) throw new Error('not compiled');
      const solution = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, grid));
      if (!solution.ok) throw new Error('not solved');
      return solution.value.potential('m');
    };
    const plain = run(false);
    const driven = run(true);
    grid.forEach((omega, i) => {
      const h = high(omega);
      expect(driven.re[i]).toBeCloseTo(plain.re[i]! * h.re - plain.im[i]! * h.im, 11);
      expect(driven.im[i]).toBeCloseTo(plain.re[i]! * h.im + plain.im[i]! * h.re, 11);
    });
  });
});

import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  type AdmittanceTable,
  type Branch,
  branchCurrentInto,
  branchPower,
  branchValueOf,
  branchVoltageInto,
  type CompiledCircuit,
  type Complexes,
  compileCircuit,
  type NodeSolution,
  type OutputTerm,
  outputDerivativeInto,
  retabulate,
  solveAdjoint,
  solveInto,
  tabulateAdmittances,
} from '../../../src/core/circuit/index.ts';
import { randomStream } from '../../../src/core/math/randomStream.ts';
import { centralDifference } from './centralDifference.ts';
import { type Comparison, comparisonWithNgspice, netlist } from './ngspiceComparison.ts';
import { branchesOf, circuitOfAnySize, type Element, logOmegas, simulatorLines } from './randomCircuit.ts';
import { solved, succeeded } from './solved.ts';

const COUNT = 500;
const circuits: readonly (readonly Element[])[] = fc.sample(circuitOfAnySize, { seed: 20260401, numRuns: COUNT });
const omegas = logOmegas(30, 15000, 5);
const pair = () => ({ re: new Float64Array(omegas.length), im: new Float64Array(omegas.length) });

describe('500 random circuits of 5 to 40 parts (seed 20260401)', () => {
  let difference: Comparison;
  beforeAll(async () => {
    difference = await comparisonWithNgspice();
  }, 60_000);

  it('are as many and as large as stated', () => {
    expect(circuits).toHaveLength(COUNT);
    const sizes = circuits.map(({ length }) => length);
    expect([Math.min(...sizes), Math.max(...sizes)]).toEqual([5, 40]);
    expect(circuits.filter((elements) => elements.some(({ kind }) => kind === 'G')).length).toBeGreaterThan(COUNT / 3);
  });

  it('have the node potentials of ngspice, to 1e-9 of the largest', async () => {
    const off: unknown[] = [];
    for (const [i, elements] of circuits.entries()) {
      const worst = await difference(branchesOf(elements), netlist(simulatorLines(elements), '.ac dec 6 5 40000'));
      if (!(worst < 1e-9)) off.push({ i, worst });
    }
    expect(off).toEqual([]);
  }, 120_000);

  it('take up the power that the source delivers, to 1e-9 of the volts times amperes in them', () => {
    const off: unknown[] = [];
    const current = pair();
    const voltage = pair();
    circuits.forEach((elements, i) => {
      const branches = branchesOf(elements);
      const solution = solved(branches, omegas);
      const rest = new Float64Array(omegas.length);
      const voltAmperes = new Float64Array(omegas.length);
      for (const { id, kind } of branches) {
        // A gyrator's two sides cancel: what it takes in at one it gives at the other.
        if (kind === 'gyrator') continue;
        const power = branchPower(solution, id);
        branchCurrentInto(current, solution, id);
        branchVoltageInto(voltage, solution, id);
        for (let f = 0; f < omegas.length; f++) {
          rest[f]! += kind === 'source' ? power[f]! : -power[f]!;
          voltAmperes[f]! += Math.hypot(voltage.re[f]!, voltage.im[f]!) * Math.hypot(current.re[f]!, current.im[f]!);
        }
      }
      for (let f = 0; f < omegas.length; f++) {
        // The tenth of a milliwatt stands for circuits in which no current flows but for rounding.
        const share = Math.abs(rest[f]!) / (voltAmperes[f]! + 1e-4);
        if (!(share < 1e-9)) off.push({ i, f, share });
      }
    });
    expect(off).toEqual([]);
  });

  it('have the derivatives of central differences by the adjoint, to 1e-6', () => {
    const off: unknown[] = [];
    let compared = 0;
    circuits.forEach((elements, i) => {
      const branches = branchesOf(elements);
      const solution = solved(branches, omegas);
      const output = randomOutput(solution, i);
      const adjoint = solveAdjoint(solution, output);
      const trial = new Trials(branches);
      elements.forEach((element, k) => {
        const value = variedValue(element);
        if (value === null) return;
        const { id } = branches[k]!;
        const ours = pair();
        outputDerivativeInto(ours, adjoint, id, value.name);
        const size = branchValueOf(solution, { id, name: value.name });
        const expected = centralDifference((x) => {
          const moved = branchesOf(elements.map((e, m) => (m === k ? value.times(Math.exp(x)) : e)));
          return outputOf(trial.solve(k, moved[k]!), output);
        }, 0.02);
        const level = outputOf(solution, output);
        for (let f = 0; f < omegas.length; f++) {
          const error = Math.hypot(ours.re[f]! * size - expected.re[f]!, ours.im[f]! * size - expected.im[f]!);
          const scale = Math.hypot(level.re[f]!, level.im[f]!) + Math.hypot(expected.re[f]!, expected.im[f]!);
          compared++;
          if (!(error < 1e-6 * scale)) off.push({ i, id, f, share: error / scale });
        }
      });
    });
    expect(off).toEqual([]);
    expect(compared).toBeGreaterThan(20 * COUNT);
  }, 120_000);
});

/** Solves the same circuit again with one branch exchanged, in the same buffers. */
class Trials {
  private readonly compiled: CompiledCircuit;
  private table: AdmittanceTable;
  private solution: NodeSolution;

  constructor(branches: readonly Branch[]) {
    this.compiled = succeeded(compileCircuit(branches));
    this.table = tabulateAdmittances(this.compiled, omegas);
    this.solution = solved(branches, omegas);
  }

  solve(index: number, branch: Branch): NodeSolution {
    const compiled = { ...this.compiled, branches: this.compiled.branches.map((b, k) => (k === index ? branch : b)) };
    this.table = retabulate(compiled, this.table);
    this.solution = succeeded(solveInto(this.solution, compiled, this.table));
    return this.solution;
  }
}

/** Every node with a complex weight of its own. */
function randomOutput({ compiled, frequencyCount }: NodeSolution, seed: number): OutputTerm[] {
  const random = randomStream(seed);
  const row = () => Float64Array.from({ length: frequencyCount }, () => random.normal());
  return compiled.nodes.map((node) => ({ node, weight: { re: row(), im: row() } }));
}

function outputOf(solution: NodeSolution, terms: readonly OutputTerm[]): Complexes {
  const out = pair();
  for (const { node, weight } of terms) {
    if (typeof weight === 'number') throw new Error('weights over the sweep are expected');
    const { re, im } = solution.potential(node);
    for (let f = 0; f < omegas.length; f++) {
      out.re[f]! += re[f]! * weight.re[f]! - im[f]! * weight.im[f]!;
      out.im[f]! += re[f]! * weight.im[f]! + im[f]! * weight.re[f]!;
    }
  }
  return out;
}

function variedValue(e: Element): { readonly name: string; readonly times: (factor: number) => Element } | null {
  switch (e.kind) {
    case 'R':
      return { name: 'ohm', times: (factor) => ({ ...e, ohm: e.ohm * factor }) };
    case 'L':
      return { name: 'henry', times: (factor) => ({ ...e, henry: e.henry * factor }) };
    case 'C':
      return { name: 'farad', times: (factor) => ({ ...e, farad: e.farad * factor }) };
    default:
      return null;
  }
}

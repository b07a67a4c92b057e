import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AdmittanceBranch,
  type Branch,
  branchPower,
  branchValueOf,
  capacitor,
  coil,
  compileCircuit,
  gyrator,
  impedanceLogSensitivity,
  inductor,
  inputImpedance,
  logSensitivity,
  outputDerivativeInto,
  powerDerivatives,
  resistor,
  solveAdjoint,
  solveInto,
  source,
  tabulateAdmittances,
} from '../../../src/core/circuit/index.ts';
import { branchesOf, type Element, logOmegas, randomCircuit } from './randomCircuit.ts';
import { solved, succeeded } from './solved.ts';

const omegas = logOmegas(30, 15000, 7);
const pair = () => ({ re: new Float64Array(omegas.length), im: new Float64Array(omegas.length) });

/** The parts of a small network with a driver, their values by `id.name` times a factor. */
function network(changes: Readonly<Record<string, number>> = {}, resistanceOhm = 0.2): Branch[] {
  const value = (key: string, nominal: number): number => nominal * (changes[key] ?? 1);
  return [
    source('V1', ['in', '0'], 2.83, resistanceOhm),
    inductor('L1', ['in', 'a'], {
      henry: value('L1.henry', 1.2e-3),
      dcrOhm: value('L1.dcrOhm', 0.4),
      coreLossTangent: value('L1.coreLossTangent', 0.02),
    }),
    capacitor('C1', ['a', '0'], { farad: value('C1.farad', 12e-6), esrOhm: value('C1.esrOhm', 0.3) }),
    resistor('R1', ['in', 'b'], value('R1.ohm', 40)),
    resistor('R2', ['a', 'b'], value('R2.ohm', 2.2)),
    coil('LS1', ['b', 'emf'], {
      reOhm: value('LS1.reOhm', 5.8),
      leH: value('LS1.leH', 0.3e-3),
      semiInductance: { kOhmSn: value('LS1.kOhmSn', 0.02), exponent: value('LS1.exponent', 0.6) },
    }),
    gyrator('motor', ['emf', '0'], ['cone', 'box'], 0.0025),
    capacitor('Cm', ['cone', '0'], { farad: value('Cm.farad', 3e-8), esrOhm: 0 }),
    resistor('Rm', ['cone', '0'], value('Rm.ohm', 2e5)),
    inductor('Lm', ['cone', '0'], { henry: value('Lm.henry', 180), dcrOhm: 0, coreLossTangent: 0 }),
    capacitor('Cb', ['box', '0'], { farad: value('Cb.farad', 2e-7), esrOhm: 0 }),
  ];
}

const values = network().flatMap((branch) =>
  branch.kind === 'admittance'
    ? Object.entries(branch.derivatives ?? {}).flatMap(([name, { value }]) =>
        value === 0 ? [] : [{ id: branch.id, name }],
      )
    : [],
);
const STEP = 1e-5;
/** Central difference of a complex output with ln p. */
function centralDifference(key: string, output: (branches: Branch[]) => { re: Float64Array; im: Float64Array }) {
  const up = output(network({ [key]: 1 + STEP }));
  const down = output(network({ [key]: 1 - STEP }));
  return {
    re: up.re.map((x, f) => (x - down.re[f]!) / (2 * STEP)),
    im: up.im.map((x, f) => (x - down.im[f]!) / (2 * STEP)),
  };
}

describe('the adjoint solve agrees with central differences to 1e-6', () => {
  it('covers every value of every part', () => {
    expect(values.map(({ id, name }) => `${id}.${name}`)).toEqual([
      'L1.henry',
      'L1.dcrOhm',
      'L1.coreLossTangent',
      'C1.farad',
      'C1.esrOhm',
      'R1.ohm',
      'R2.ohm',
      'LS1.reOhm',
      'LS1.leH',
      'LS1.kOhmSn',
      'LS1.exponent',
      'Cm.farad',
      'Rm.ohm',
      'Lm.henry',
      'Cb.farad',
    ]);
  });

  it.each(['b', 'cone', 'box'])('for the potential of %s', (node) => {
    const solution = solved(network(), omegas);
    const adjoint = solveAdjoint(solution, [{ node, weight: 1 }]);
    const out = pair();
    const nominal = solution.potential(node);
    for (const { id, name } of values) {
      outputDerivativeInto(out, adjoint, id, name);
      const expected = centralDifference(`${id}.${name}`, (branches) => solved(branches, omegas).potential(node));
      const size = branchValueOf(solution, { id, name });
      for (let f = 0; f < omegas.length; f++) {
        const scale = Math.hypot(nominal.re[f]!, nominal.im[f]!);
        expect(Math.abs(out.re[f]! * size - expected.re[f]!) / scale).toBeLessThan(1e-6);
        expect(Math.abs(out.im[f]! * size - expected.im[f]!) / scale).toBeLessThan(1e-6);
      }
    }
  });

  it('for a sum of potentials with complex weights, as a far-field pressure is', () => {
    const weight = { re: omegas.map((w) => 1 / w), im: omegas.map((w) => -1e-4 * Math.sqrt(w)) };
    const output = (branches: Branch[]) => {
      const solution = solved(branches, omegas);
      const [cone, b] = [solution.potential('cone'), solution.potential('b')];
      return {
        re: cone.re.map((x, f) => x * weight.re[f]! - cone.im[f]! * weight.im[f]! - 2 * b.re[f]!),
        im: cone.re.map((x, f) => x * weight.im[f]! + cone.im[f]! * weight.re[f]! - 2 * b.im[f]!),
      };
    };
    const solution = solved(network(), omegas);
    const adjoint = solveAdjoint(solution, [
      { node: 'cone', weight },
      { node: 'b', weight: -2 },
      { node: '0', weight: 7 },
    ]);
    const nominal = output(network());
    for (const value of values) {
      const ours = logSensitivity(adjoint, nominal, value);
      const expected = centralDifference(`${value.id}.${value.name}`, output);
      for (let f = 0; f < omegas.length; f++) {
        const [a, b] = [nominal.re[f]!, nominal.im[f]!];
        const [p, q] = [expected.re[f]!, expected.im[f]!];
        const squared = a * a + b * b;
        expect(Math.abs(ours.re[f]! - (p * a + q * b) / squared)).toBeLessThan(1e-6);
        expect(Math.abs(ours.im[f]! - (q * a - p * b) / squared)).toBeLessThan(1e-6);
      }
    }
  });

  it.each([0, 0.2])('for the input impedance without a second solve, source resistance %d', (resistanceOhm) => {
    const output = (branches: Branch[]) => inputImpedance(solved(branches, omegas), 'V1');
    const solution = solved(network({}, resistanceOhm), omegas);
    const nominal = output(network());
    for (const value of values) {
      const ours = impedanceLogSensitivity(solution, 'V1', value);
      const expected = centralDifference(`${value.id}.${value.name}`, output);
      for (let f = 0; f < omegas.length; f++) {
        const [a, b] = [nominal.re[f]!, nominal.im[f]!];
        const [p, q] = [expected.re[f]!, expected.im[f]!];
        const squared = a * a + b * b;
        expect(Math.abs(ours.re[f]! - (p * a + q * b) / squared)).toBeLessThan(1e-6);
        expect(Math.abs(ours.im[f]! - (q * a - p * b) / squared)).toBeLessThan(1e-6);
      }
    }
  });

  it.each(['R2', 'L1', 'C1', 'Rm'])('for the power that %s takes up', (id) => {
    const solution = solved(network(), omegas);
    const nominal = branchPower(solution, id);
    const ours = powerDerivatives(solution, id, values);
    values.forEach((value, i) => {
      const power = (branches: Branch[]) => {
        const re = branchPower(solved(branches, omegas), id);
        return { re, im: re };
      };
      const expected = centralDifference(`${value.id}.${value.name}`, power);
      for (let f = 0; f < omegas.length; f++) {
        expect(Math.abs(ours[i]![f]! - expected.re[f]!) / nominal[f]!).toBeLessThan(1e-6);
      }
    });
  });

  it('several outputs one after the other, and again after a new solve in the same buffers', () => {
    const value = { id: 'C1', name: 'farad' };
    const sensitivityOf = (solution: ReturnType<typeof solved>, node: string) =>
      logSensitivity(solveAdjoint(solution, [{ node, weight: 1 }]), solution.potential(node), value);
    const first = solved(network(), omegas);
    const [atB, atCone] = [sensitivityOf(first, 'b'), sensitivityOf(first, 'cone')];
    expect(sensitivityOf(solved(network(), omegas), 'cone')).toEqual(atCone);
    const compiled = succeeded(compileCircuit(network({ 'C1.farad': 3 })));
    const again = succeeded(solveInto(first, compiled, tabulateAdmittances(compiled, omegas)));
    const fresh = sensitivityOf(solved(network({ 'C1.farad': 3 }), omegas), 'b');
    expect(sensitivityOf(again, 'b')).toEqual(fresh);
    expect(fresh).not.toEqual(atB);
  });

  it('at a lossless inner node in resonance, where the solver pivots', () => {
    const [henry, farad] = [1e-3, 2.2e-6];
    const at = Float64Array.of(1 / Math.sqrt(henry * farad));
    const circuit = (scale: number): Branch[] => [
      source('V1', ['in', '0'], 1, 0),
      resistor('R1', ['in', 'a'], 8 * scale),
      inductor('L1', ['a', 'between'], { henry, dcrOhm: 0, coreLossTangent: 0 }),
      capacitor('C1', ['between', 'b'], { farad, esrOhm: 0 }),
      resistor('R2', ['b', '0'], 4),
      gyrator('G1', ['b', '0'], ['m', '0'], 0.05),
      resistor('Rm', ['m', '0'], 100),
    ];
    const solution = solved(circuit(1), at);
    expect(solution.suspect[0]).toBe(1);
    const out = { re: new Float64Array(1), im: new Float64Array(1) };
    outputDerivativeInto(out, solveAdjoint(solution, [{ node: 'b', weight: 1 }]), 'R1', 'ohm');
    // The gyrator shows 1 / (g² Rm) = 4 Ω beside R2. b = 2 / (R1 + 2): db/dR1 = -2 / (R1 + 2)²
    expect(out.re[0]).toBeCloseTo(-2 / 100, 9);
    expect(out.im[0]).toBeCloseTo(0, 9);
    // On the other side, where the transpose has the opposite sign: v(m) = Rm g b.
    outputDerivativeInto(out, solveAdjoint(solution, [{ node: 'm', weight: 1 }]), 'R1', 'ohm');
    expect(out.re[0]).toBeCloseTo(100 * 0.05 * (-2 / 100), 9);
  });
});

describe('identities of the logarithmic sensitivities', () => {
  it('scaling every impedance leaves a voltage ratio alone: sums over R and L less those over C are 0 (seed 4)', () => {
    fc.assert(
      fc.property(randomCircuit, (elements) => {
        const passive = elements.filter((e) => e.kind !== 'G' && !('nodes' in e && e.nodes[0].startsWith('m')));
        // A source resistance is no part: it would have to be scaled along.
        const branches = branchesOf(passive.map(withoutResistance));
        const solution = solved(branches, omegas);
        const node = solution.compiled.nodes[0]!;
        const adjoint = solveAdjoint(solution, [{ node, weight: 1 }]);
        const output = solution.potential(node);
        const sum = pair();
        const gross = new Float64Array(omegas.length);
        for (const branch of branches) {
          if (branch.kind !== 'admittance') continue;
          for (const name of Object.keys(branch.derivatives ?? {})) {
            const s = logSensitivity(adjoint, output, { id: branch.id, name });
            const sign = name === 'farad' ? -1 : name === 'coreLossTangent' ? 0 : 1;
            for (let f = 0; f < omegas.length; f++) {
              sum.re[f]! += sign * s.re[f]!;
              sum.im[f]! += sign * s.im[f]!;
              gross[f]! += Math.hypot(s.re[f]!, s.im[f]!);
            }
          }
        }
        for (let f = 0; f < omegas.length; f++) {
          expect(Math.hypot(sum.re[f]!, sum.im[f]!)).toBeLessThan(1e-9 * (1 + gross[f]!));
        }
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it('works for circuits whose gyrators form a loop, which no signs make symmetric', () => {
    const circuit = (scale: number): AdmittanceBranch[] => [
      resistor('R1', ['in', 'a'], 3 * scale),
      resistor('R2', ['a', '0'], 5),
      resistor('R3', ['b', '0'], 7),
      capacitor('C1', ['b', 'c'], { farad: 1e-4, esrOhm: 0 }),
      resistor('R4', ['c', 'a'], 2),
    ];
    const whole = (scale: number): Branch[] => [
      source('V1', ['in', '0'], 1, 0),
      ...circuit(scale),
      gyrator('G1', ['a', '0'], ['b', '0'], 0.3),
    ];
    const solution = solved(whole(1), omegas);
    expect(solution.compiled.symmetric).toBe(false);
    const s = logSensitivity(solveAdjoint(solution, [{ node: 'c', weight: 1 }]), solution.potential('c'), {
      id: 'R1',
      name: 'ohm',
    });
    const up = solved(whole(1 + STEP), omegas).potential('c');
    const down = solved(whole(1 - STEP), omegas).potential('c');
    for (let f = 0; f < omegas.length; f++) {
      const ratio = Math.hypot(up.re[f]!, up.im[f]!) / Math.hypot(down.re[f]!, down.im[f]!);
      expect(Math.abs(s.re[f]! - Math.log(ratio) / (2 * STEP))).toBeLessThan(1e-6);
    }
    expect(() => impedanceLogSensitivity(solution, 'V1', { id: 'R1', name: 'ohm' })).toThrow(/loop/);
  });

  it('throws for values that a branch does not have', () => {
    const solution = solved(network(), omegas);
    const adjoint = solveAdjoint(solution, [{ node: 'a', weight: 1 }]);
    expect(() => outputDerivativeInto(pair(), adjoint, 'R1', 'farad')).toThrow(/no value farad/);
    expect(() => outputDerivativeInto(pair(), adjoint, 'motor', 'ohm')).toThrow(/no value ohm/);
    expect(() => branchValueOf(solution, { id: 'nobody', name: 'ohm' })).toThrow(/no branch nobody/);
    expect(() => powerDerivatives(solution, 'V1', [])).toThrow(/no part/);
  });
});

function withoutResistance(element: Element): Element {
  return element.kind === 'V' ? { ...element, resistanceOhm: 0 } : element;
}

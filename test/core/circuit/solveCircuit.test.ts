import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Branch,
  branchCurrentInto,
  branchPower,
  branchVoltageInto,
  capacitor,
  compileCircuit,
  gyrator,
  inductor,
  inputImpedance,
  OPEN_OHM,
  resistor,
  secondaryCurrentInto,
  solveCircuit,
  solveInto,
  source,
  sourceCurrent,
  tabulateAdmittances,
} from '../../../src/core/circuit/index.ts';
import { solveByMatrix } from './nodalMatrix.ts';
import { branchesOf, logOmegas, randomCircuit } from './randomCircuit.ts';
import { greatestPotential, solved, succeeded } from './solved.ts';

const coilOf = (id: string, nodes: [string, string], henry: number, dcrOhm = 0) =>
  inductor(id, nodes, { henry, dcrOhm, coreLossTangent: 0 });
const pair = (count: number) => ({ re: new Float64Array(count), im: new Float64Array(count) });

describe('solveCircuit', () => {
  it('divides a voltage', () => {
    const solution = solved(
      [source('V1', ['in', '0'], 3, 0), resistor('R1', ['in', 'out'], 2), resistor('R2', ['out', '0'], 4)],
      Float64Array.of(100, 1000),
    );
    expect([...solution.potential('out').re]).toEqual([2, 2]);
    expect([...solution.potential('in').re]).toEqual([3, 3]);
    expect([...solution.potential('0').re]).toEqual([0, 0]);
    expect(() => solution.potential('nowhere')).toThrow(/no node nowhere/);
  });

  it('turns what stands behind a gyrator into its dual: R becomes 1/(g² R), a capacitor becomes a coil', () => {
    const omegas = logOmegas(10, 10000, 40);
    const g = 0.05;
    const solution = solved(
      [
        source('V1', ['in', '0'], 1, 0),
        gyrator('G1', ['in', '0'], ['m', '0'], g),
        resistor('R1', ['m', '0'], 20),
        capacitor('C1', ['m', '0'], { farad: 1e-5, esrOhm: 0 }),
      ],
      omegas,
    );
    const z = inputImpedance(solution, 'V1');
    // y of the far side in parallel becomes z = y / g², a series connection.
    omegas.forEach((omega, f) => {
      expect(z.re[f]!).toBeCloseTo(1 / (g * g * 20), 10);
      expect(z.im[f]! / ((omega * 1e-5) / (g * g))).toBeCloseTo(1, 12);
    });
  });

  it('agrees with a dense modified nodal matrix solved by mathjs, 1e-9 of each node’s greatest (seed 7)', () => {
    const omegas = logOmegas(20, 20000, 4);
    fc.assert(
      fc.property(randomCircuit, (elements) => {
        const branches = branchesOf(elements);
        const solution = solved(branches, omegas);
        const least = greatestPotential(solution, solution.compiled.nodes) / 1000;
        omegas.forEach((omega, f) => {
          const expected = solveByMatrix(branches, omega);
          for (const node of solution.compiled.nodes) {
            const ours = solution.potential(node);
            const theirs = expected.get(node)!;
            const scale = Math.max(least, greatestPotential(solution, [node]));
            expect(Math.hypot(ours.re[f]! - theirs.re, ours.im[f]! - theirs.im) / scale).toBeLessThan(1e-9);
          }
        });
      }),
      { seed: 7, numRuns: 25 },
    );
  });

  it('gives the same in old buffers, also when the circuit changes (seed 11)', () => {
    const omegas = logOmegas(20, 20000, 70);
    fc.assert(
      fc.property(randomCircuit, randomCircuit, (first, second) => {
        const earlier = solved(branchesOf(first), omegas);
        const compiled = succeeded(compileCircuit(branchesOf(second)));
        const table = tabulateAdmittances(compiled, omegas);
        const again = succeeded(solveInto(earlier, compiled, table));
        const fresh = succeeded(solveCircuit(compiled, table));
        for (const node of compiled.nodes) expect(again.potential(node)).toEqual(fresh.potential(node));
      }),
      { seed: 11, numRuns: 20 },
    );
  });

  it('is reciprocal: 1 A into b raises a as 1 A into a raises b (seed 3)', () => {
    const omegas = logOmegas(20, 20000, 9);
    fc.assert(
      fc.property(randomCircuit, fc.nat(), fc.nat(), (elements, i, j) => {
        const passive = branchesOf(elements.filter((e) => e.kind !== 'V' && e.kind !== 'G' && !touches(e, 'm')));
        const nodes = [...new Set(passive.flatMap((b) => (b.kind === 'gyrator' ? [] : b.nodes)))].filter(
          (n) => n !== '0',
        );
        const [a, b] = [nodes[i % nodes.length]!, nodes[j % nodes.length]!];
        // 1 A through a very large resistance from a very large voltage; the resistance loads both ways alike.
        const load = (node: string, volt: number, id: string) => source(id, [node, '0'], volt, 1e4);
        const tied: Branch[] = [...passive, resistor('tie', ['n1', '0'], 50)];
        const forward = solved([...tied, load(a, 1e4, 'Va'), load(b, 0, 'Vb')], omegas).potential(b);
        const backward = solved([...tied, load(a, 0, 'Va'), load(b, 1e4, 'Vb')], omegas).potential(a);
        for (let f = 0; f < omegas.length; f++) {
          const scale = Math.hypot(forward.re[f]!, forward.im[f]!) + 1e-6;
          expect(Math.abs(forward.re[f]! - backward.re[f]!) / scale).toBeLessThan(1e-9);
          expect(Math.abs(forward.im[f]! - backward.im[f]!) / scale).toBeLessThan(1e-9);
        }
      }),
      { seed: 3, numRuns: 40 },
    );
  });

  it('balances power: what the source delivers, the parts take up, to 1e-9 (seed 5)', () => {
    const omegas = logOmegas(20, 20000, 9);
    fc.assert(
      fc.property(randomCircuit, (elements) => {
        const branches = branchesOf(elements);
        const solution = solved(branches, omegas);
        const delivered = new Float64Array(omegas.length);
        const apparent = new Float64Array(omegas.length);
        for (const branch of branches) {
          if (branch.kind === 'gyrator') continue;
          const power = branchPower(solution, branch.id);
          const current = pair(omegas.length);
          const voltage = pair(omegas.length);
          branchCurrentInto(current, solution, branch.id);
          branchVoltageInto(voltage, solution, branch.id);
          for (let f = 0; f < omegas.length; f++) {
            delivered[f]! += branch.kind === 'source' ? power[f]! : -power[f]!;
            apparent[f]! += Math.hypot(voltage.re[f]!, voltage.im[f]!) * Math.hypot(current.re[f]!, current.im[f]!);
          }
        }
        for (let f = 0; f < omegas.length; f++) {
          // The ten microwatts stand for circuits in which no current flows.
          expect(Math.abs(delivered[f]!)).toBeLessThan(1e-9 * (apparent[f]! + 1e-5));
        }
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  it('loses no power in a gyrator and keeps the currents of every node in balance', () => {
    const omegas = logOmegas(20, 20000, 50);
    const motor = gyrator('G1', ['e', 'f'], ['m', 'b'], 0.003);
    const solution = solved(
      [
        source('V1', ['in', '0'], 2.83, 0.1),
        resistor('Re', ['in', 'e'], 6),
        resistor('Rf', ['f', '0'], 0.2),
        motor,
        capacitor('Cm', ['m', '0'], { farad: 1e-6, esrOhm: 100 }),
        capacitor('Cb', ['b', '0'], { farad: 1e-7, esrOhm: 0 }),
        coilOf('Lb', ['b', '0'], 40, 300),
      ],
      omegas,
    );
    const [i1, i2, v1, v2, intoCoil] = [pair(50), pair(50), pair(50), pair(50), pair(50)];
    branchCurrentInto(i1, solution, 'G1');
    secondaryCurrentInto(i2, solution, motor);
    branchVoltageInto(v1, solution, 'G1');
    const m = solution.potential('m');
    const b = solution.potential('b');
    branchCurrentInto(intoCoil, solution, 'Re');
    for (let f = 0; f < 50; f++) {
      v2.re[f] = m.re[f]! - b.re[f]!;
      v2.im[f] = m.im[f]! - b.im[f]!;
      const primary = v1.re[f]! * i1.re[f]! + v1.im[f]! * i1.im[f]!;
      const secondary = v2.re[f]! * i2.re[f]! + v2.im[f]! * i2.im[f]!;
      expect(Math.abs(primary + secondary)).toBeLessThan(1e-12);
      expect(intoCoil.re[f]!).toBeCloseTo(i1.re[f]!, 12);
    }
  });

  it('keeps its digits at a node between lossless L and C, at resonance and close to it', () => {
    const [henry, farad] = [1e-3, 2.2e-6];
    const resonance = 1 / Math.sqrt(henry * farad);
    const offsets = [-1e-2, -1e-6, -1e-9, -1e-12, -1e-15, 0, 1e-15, 1e-12, 1e-9, 1e-6, 1e-2];
    const omegas = Float64Array.from(offsets, (x) => resonance * (1 + x));
    const solution = solved(
      [
        source('V1', ['in', '0'], 1, 0),
        resistor('R1', ['in', 'a'], 8),
        coilOf('L1', ['a', 'between'], henry),
        capacitor('C1', ['between', 'b'], { farad, esrOhm: 0 }),
        resistor('R2', ['b', '0'], 4),
      ],
      omegas,
    );
    expect([...solution.suspect]).toEqual([0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0]);
    offsets.forEach((_, f) => {
      // One current through all of it; b = 4 i. The reactance is formed as the circuit forms it.
      const x = omegas[f]! * henry - 1 / (omegas[f]! * farad);
      const squared = 144 + x * x;
      expect(Math.abs(solution.potential('b').re[f]! - (4 * 12) / squared)).toBeLessThan(1e-12);
      expect(Math.abs(solution.potential('b').im[f]! + (4 * x) / squared)).toBeLessThan(1e-12);
      const inner = solution.potential('between');
      expect(inner.im[f]!).toBeCloseTo(-1 / (omegas[f]! * farad) / 12, 1);
    });
  });

  it('keeps the digits of a piece that hangs on far less than what lies within it', () => {
    // 245 S at 5 Hz within, 3 µS to the rest: of a sum of both, double precision keeps 1e-8 of the tie.
    const solution = solved(
      [
        source('V1', ['in', '0'], 1, 0),
        capacitor('C1', ['in', 'a'], { farad: 1e-7, esrOhm: 1 }),
        coilOf('L1', ['a', 'b'], 130e-6),
        coilOf('L2', ['b', 'end'], 1e-5),
        resistor('R1', ['b', 'c'], 0.1),
        capacitor('C2', ['c', 'd'], { farad: 640e-6, esrOhm: 0 }),
        resistor('R2', ['d', '0'], 1e6),
      ],
      Float64Array.of(31.4, 3140),
    );
    expect(solution.suspect[0]).toBe(1);
    [31.4, 3140].forEach((omega, f) => {
      // One current through all but L2: 1 MΩ behind 1.1 Ω, both capacitors and L1.
      const x = -1 / (omega * 1e-7);
      const y = omega * 130e-6;
      const z = -1 / (omega * 640e-6);
      const r = 1e6 + 1.1;
      const squared = r * r + (x + y + z) ** 2;
      const current = { re: r / squared, im: -(x + y + z) / squared };
      const a = { re: 1 - (current.re - current.im * x), im: -(current.im + current.re * x) };
      const b = { re: a.re + current.im * y, im: a.im - current.re * y };
      const d = { re: 1e6 * current.re, im: 1e6 * current.im };
      for (const [node, expected] of Object.entries({ a, b, end: b, d })) {
        const { re, im } = solution.potential(node);
        // Up to a millionth may cancel unwatched: 1e-10.
        expect(Math.hypot(re[f]! - expected.re, im[f]! - expected.im)).toBeLessThan(1e-10);
      }
    });
  });

  it('does not take an acoustical node for a singular one: its admittances are millionths of the electrical ones', () => {
    const omegas = logOmegas(10, 1000, 30);
    const solution = solved(
      [
        source('V1', ['in', '0'], 2.83, 0),
        resistor('Re', ['in', 'e'], 6),
        gyrator('motor', ['e', '0'], ['cone', 'box'], 0.02 / 7),
        // Mechanical side over Sd²: 30 g, 1 mm/N, 2 kg/s on 0.02 m².
        capacitor('Cm', ['cone', '0'], { farad: 1e-9, esrOhm: 0 }),
        resistor('Rm', ['cone', '0'], 5e9),
        capacitor('Cb', ['box', '0'], { farad: 2.1e-7, esrOhm: 0 }),
      ],
      omegas,
    );
    expect(solution.suspect.some((x) => x === 1)).toBe(false);
  });

  it('names the node where lossless parts leave the potential open at one frequency', () => {
    const [henry, farad] = [1e-3, 1e-6];
    const resonance = 1 / Math.sqrt(henry * farad);
    const compiled = succeeded(
      compileCircuit([
        source('V1', ['in', '0'], 1, 0),
        coilOf('L1', ['in', 'trap'], henry),
        capacitor('C1', ['trap', '0'], { farad, esrOhm: 0 }),
      ]),
    );
    const result = solveCircuit(compiled, tabulateAdmittances(compiled, Float64Array.of(1, resonance, 1e5)));
    expect(result.ok ? [] : result.problems).toEqual([
      {
        code: 'circuit.singular',
        place: { kind: 'node', id: 'trap' },
        values: { node: 'trap', atHz: resonance / (2 * Math.PI) },
      },
    ]);
  });

  it('names it too where rounding leaves a little of what should cancel, and not a millionth beside it', () => {
    for (let i = 0; i < 40; i++) {
      const [henry, farad] = [1e-3 * 1.17 ** i, 1e-6 * 1.31 ** (i % 7)];
      const resonance = 1 / Math.sqrt(henry * farad);
      const compiled = succeeded(
        compileCircuit([
          source('V1', ['in', '0'], 1, 0),
          coilOf('L1', ['in', 'trap'], henry),
          capacitor('C1', ['trap', '0'], { farad, esrOhm: 0 }),
        ]),
      );
      const at = (factor: number) => tabulateAdmittances(compiled, Float64Array.of(1, resonance * factor));
      const result = solveCircuit(compiled, at(1));
      expect(result.ok ? [] : result.problems.map((p) => [p.code, p.place.id])).toEqual([['circuit.singular', 'trap']]);
      const beside = succeeded(solveCircuit(compiled, at(1 + 1e-6)));
      expect(beside.potential('trap').re[1]! / -5e5).toBeCloseTo(1, 4);
      // So close that the solver pivots; 1e-12 is the offset, rounding leaves 1e-4 of it.
      const close = succeeded(solveCircuit(compiled, at(1 + 1e-12)));
      expect(close.suspect[1]).toBe(1);
      expect(close.potential('trap').re[1]! / -5e11).toBeCloseTo(1, 2);
    }
  });

  it('takes a node that gyrators alone hold: an open far side is a short on the near one', () => {
    const solution = solved(
      [gyrator('G1', ['m', '0'], ['x', '0'], 0.1), source('V1', ['x', '0'], 1, 2)],
      Float64Array.of(100, 1000),
    );
    expect(solution.potential('x').re[0]).toBe(0);
    // All of 1 V / 2 Ω flows into x: -g v(m).
    expect(solution.potential('m').re[0]).toBeCloseTo(-5, 12);
  });

  it('names the part whose admittance is no number', () => {
    const compiled = succeeded(
      compileCircuit([source('V1', ['in', '0'], 1, 0), coilOf('L1', ['in', 'a'], 0), resistor('R1', ['a', '0'], 1)]),
    );
    const result = solveCircuit(compiled, tabulateAdmittances(compiled, Float64Array.of(1)));
    expect(result.ok ? [] : result.problems.map((p) => [p.code, p.place.id])).toEqual([['circuit.not-finite', 'L1']]);
  });
});

describe('currents and impedance of sources', () => {
  const omegas = Float64Array.of(1000);
  it('leaves the source’s own resistance out of the impedance', () => {
    const solution = solved([source('V1', ['a', '0'], 10, 3), resistor('R1', ['a', '0'], 5)], omegas);
    expect(inputImpedance(solution, 'V1').re[0]).toBeCloseTo(5, 12);
    expect(sourceCurrent(solution, 'V1').re[0]).toBeCloseTo(10 / 8, 12);
    expect(branchPower(solution, 'V1')[0]).toBeCloseTo(5 * (10 / 8) ** 2, 12);
  });

  it('counts all that hangs on an ideal source, other sources and reversed parts too', () => {
    const solution = solved(
      [
        source('V1', ['a', '0'], 2, 0),
        source('V2', ['a', 'b'], 1, 4),
        resistor('R1', ['0', 'a'], 8),
        resistor('R2', ['b', '0'], 6),
        gyrator('G1', ['g', '0'], ['0', 'a'], 0.1),
        resistor('R3', ['g', '0'], 10),
      ],
      omegas,
    );
    const z = solveByMatrix(solution.compiled.branches, 1000);
    const b = z.get('b')!.re;
    const g = z.get('g')!.re;
    // Out of a: 2/8 through R1, -(1 - (2 - b)) / 4 through V2, and +g v(g) into the reversed secondary.
    expect(sourceCurrent(solution, 'V1').re[0]).toBeCloseTo(2 / 8 - (1 - (2 - b)) / 4 + 0.1 * g, 12);
  });

  it('calls an impedance above 1 GΩ open', () => {
    const solution = solved(
      [source('V1', ['a', '0'], 2, 0), source('V2', ['b', '0'], 2, 1), resistor('R', ['a', 'x'], 1)],
      omegas,
    );
    expect(inputImpedance(solution, 'V1').re[0]).toBe(OPEN_OHM);
    expect(inputImpedance(solution, 'V2').re[0]).toBe(OPEN_OHM);
    expect(() => sourceCurrent(solution, 'R')).toThrow(/no source/);
  });
});

function touches(element: { nodes?: [string, string] }, prefix: string): boolean {
  return element.nodes?.some((node) => node.startsWith(prefix)) ?? false;
}

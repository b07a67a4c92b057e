import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Admittance,
  allardChampouxFluid,
  chamberAdmittance,
  coneTwoPort,
  type Duct,
  type DuctBranches,
  ductBranches,
  ductPieces,
  ductTwoPort,
  loadedInputImpedance,
  openEndAdmittance,
  piForm,
  roundDuct,
  seriesResonator,
  type TwoPort,
  twoPortBranches,
} from '../../../../src/core/acoustics/index.ts';
import {
  type Branch,
  branchCurrentInto,
  compileCircuit,
  solveCircuit,
  tabulateAdmittances,
} from '../../../../src/core/circuit/index.ts';
import {
  add,
  type Complex,
  complex,
  divide,
  magnitude,
  multiply,
  reciprocal,
} from '../../../../src/core/math/index.ts';
import { admittanceAt } from '../sweep.ts';
import { apart, omegaOf, STILL_AIR } from './integrate.ts';

const AIR = STILL_AIR;
const stamp = (name: string, duct: DuctBranches, near: string, far: string): Branch[] => [
  { kind: 'admittance', id: `${name}-between`, nodes: [near, far], admittance: duct.between },
  { kind: 'admittance', id: `${name}-near`, nodes: [near, '0'], admittance: duct.nearShunt },
  { kind: 'admittance', id: `${name}-far`, nodes: [far, '0'], admittance: duct.farShunt },
];
const shunt = (id: string, node: string, admittance: Admittance): Branch => ({
  kind: 'admittance',
  id,
  nodes: [node, '0'],
  admittance,
});

/** Flow through a branch for 1 Pa at node `in`. */
const flows = (branches: readonly Branch[], id: string, frequenciesHz: readonly number[]): Complex[] => {
  const source: Branch = { kind: 'source', id: 'V', nodes: ['in', '0'], voltageV: 1, resistanceOhm: 0 };
  const compiled = compileCircuit([source, ...branches]);
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems));
  const omegas = Float64Array.from(frequenciesHz, omegaOf);
  const solved = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, omegas));
  if (!solved.ok) throw new Error(JSON.stringify(solved.problems));
  const re = new Float64Array(omegas.length);
  const im = new Float64Array(omegas.length);
  branchCurrentInto({ re, im }, solved.value, id);
  return frequenciesHz.map((_, i) => ({ re: re[i]!, im: im[i]! }));
};

/** The same flow into a load behind the duct, by its matrix written out: U2 = p1 Y/(A + B Y). */
const byHand = ({ a, b }: TwoPort, load: Complex): Complex => divide(load, add(a, multiply(b, load)));

const mouth = openEndAdmittance({ end: 'flanged', areaM2: Math.PI * 0.035 ** 2, count: 1 }, AIR);
const sweep = Array.from({ length: 400 }, (_, i) => 10 * 2000 ** (i / 399));

describe('ductBranches', () => {
  it('in the nodal solver are the two-port by hand, through every half wave: 1e-9 over 10 Hz to 20 kHz', () => {
    const ducts: Duct[] = [
      { section: roundDuct(0.035), lengthM: 0.2 },
      { section: roundDuct(0.035), lengthM: 1.6 },
      { section: roundDuct(0.06), farSection: roundDuct(0.035), lengthM: 1.2 },
      { section: roundDuct(0.035), lengthM: 0.6, fluid: allardChampouxFluid(1500, AIR) },
    ];
    const loads = admittanceAt(mouth, sweep);
    for (const duct of ducts) {
      const got = flows([...stamp('d', ductBranches(duct, AIR), 'in', 'out'), shunt('m', 'out', mouth)], 'm', sweep);
      const wanted = sweep.map((f, i) => byHand(ductTwoPort(duct, AIR, omegaOf(f)), loads[i]!));
      const largest = Math.max(...wanted.map(magnitude));
      for (const [i, f] of sweep.entries()) {
        const error = magnitude({ re: got[i]!.re - wanted[i]!.re, im: got[i]!.im - wanted[i]!.im });
        // Deep in a stop band of the filled line the flow is e^−60 of the largest: there against that.
        expect(error / Math.max(magnitude(wanted[i]!), 1e-14 * largest), `${duct.lengthM} m at ${f} Hz`).toBeLessThan(
          1e-9,
        );
      }
    }
  });

  describe('at the half waves of a tube between two free nodes', () => {
    const duct: Duct = { section: roundDuct(0.05), lengthM: 0.5 };
    const load = openEndAdmittance({ end: 'free', areaM2: Math.PI * 0.05 ** 2, count: 1 }, AIR);
    const feed = seriesResonator({ resistance: 1e3, mass: 10, compliance: 1 });
    const circuit = (pieces: readonly DuctBranches[]): Branch[] => {
      const drive: Branch = { kind: 'admittance', id: 'feed', nodes: ['in', 'n0'], admittance: feed };
      const ducts = pieces.flatMap((piece, i) => stamp(`d${i}`, piece, `n${i}`, `n${i + 1}`));
      return [drive, ...ducts, shunt('m', `n${pieces.length}`, load)];
    };
    /** Flow into the load behind feed and duct, by hand. */
    const wantedAt = (port: TwoPort, f: number): Complex => {
      const [y] = admittanceAt(load, [f]);
      const [yFeed] = admittanceAt(feed, [f]);
      const into = reciprocal(loadedInputImpedance(port, reciprocal(y!)));
      return multiply(divide(yFeed!, add(yFeed!, into)), byHand(port, y!));
    };

    it('the walls’ loss is enough for one piece: 1e-11 within 0.5 % of the half wave', () => {
      const places = Array.from({ length: 101 }, (_, i) => 343.2 * (0.993 + i * 1e-4));
      const got = flows(circuit([ductBranches(duct, AIR)]), 'm', places);
      for (const [i, f] of places.entries())
        expect(apart(got[i]!, wantedAt(ductTwoPort(duct, AIR, omegaOf(f)), f))).toBeLessThan(1e-11);
    });

    it('without any loss one piece is singular there; two unequal ones are exact to 1e-12', () => {
      const cone = (lengthM: number) => (omega: number) =>
        coneTwoPort({ nearRadiusM: 0.05, farRadiusM: 0.05, lengthM }, AIR, omega);
      const branches = (lengthM: number): DuctBranches => twoPortBranches((omega) => piForm(cone(lengthM)(omega)));
      expect(() => flows(circuit([branches(0.5)]), 'm', [343.2])).toThrow('circuit.singular');
      const [near, far] = ductPieces(duct);
      const [got] = flows(circuit([branches(near.lengthM), branches(far.lengthM)]), 'm', [343.2]);
      expect(apart(got!, wantedAt(cone(0.5)(omegaOf(343.2)), 343.2))).toBeLessThan(1e-12);
    });
  });

  it('pieces are a cut of the same duct, tapering or not', () => {
    const straight: Duct = { section: roundDuct(0.05), lengthM: 1 };
    const [a, b] = ductPieces(straight);
    expect(a.lengthM + b.lengthM).toBeCloseTo(1, 15);
    expect(a.lengthM).toBeCloseTo(0.381966, 6);
    const taper: Duct = { section: roundDuct(0.06), farSection: roundDuct(0.03), lengthM: 1 };
    const [c, d] = ductPieces(taper);
    expect(c.farSection).toEqual(d.section);
    expect(d.farSection).toEqual(taper.farSection);
  });

  it('never give power: the real part of the whole 2 by 2 matrix has no negative direction (seed 64)', () => {
    const size = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(
        size(0.002, 0.1),
        size(0.002, 0.1),
        size(0.01, 3),
        size(5, 3000),
        fc.option(size(50, 2e4)),
        (r1, r2, lengthM, f, sigma) => {
          const fluid = sigma === null ? {} : { fluid: allardChampouxFluid(sigma, AIR) };
          const taper: Duct = { section: roundDuct(r1), farSection: roundDuct(r2), lengthM, ...fluid };
          for (const duct of [taper, { section: roundDuct(r1), lengthM, ...fluid }]) {
            const branches = ductBranches(duct, AIR);
            const [between, near, far] = [branches.between, branches.nearShunt, branches.farShunt].map(
              (y) => admittanceAt(y, [f])[0]!,
            );
            const y11 = near!.re + between!.re;
            const y22 = far!.re + between!.re;
            const scale = Math.max(magnitude(near!), magnitude(far!), magnitude(between!));
            expect(y11).toBeGreaterThan(-1e-11 * scale);
            expect(y22).toBeGreaterThan(-1e-11 * scale);
            expect(y11 * y22 - between!.re ** 2).toBeGreaterThan(-1e-11 * scale * scale);
          }
        },
      ),
      { seed: 64 },
    );
  });

  it('stay finite in a line stuffed beyond hearing: each end is an endless line, tapering or not', () => {
    const fluid = allardChampouxFluid(2e5, AIR);
    const taper: Duct = { section: roundDuct(0.05), farSection: roundDuct(0.04), lengthM: 30, fluid };
    for (const duct of [taper, { section: roundDuct(0.05), lengthM: 30, fluid }]) {
      const branches = ductBranches(duct, AIR);
      const y = admittanceAt(branches.nearShunt, [15_000])[0]!;
      expect(admittanceAt(branches.between, [15_000])[0]).toEqual({ re: 0, im: 0 });
      const short = ductTwoPort({ section: roundDuct(0.05), lengthM: 1, fluid }, AIR, omegaOf(15_000));
      expect(apart(y, reciprocal(loadedInputImpedance(short, complex(1e5))))).toBeLessThan(1e-3);
    }
  });

  it('are computed once for a sweep, and again when the caller changes it in place', () => {
    let count = 0;
    const branches = twoPortBranches((omega) => {
      count++;
      return { between: complex(omega), nearShunt: complex(0), farShunt: complex(1) };
    });
    const omegas = Float64Array.of(1, 2, 3);
    const [re, im] = [new Float64Array(3), new Float64Array(3)];
    branches.between(omegas, re, im);
    branches.farShunt(omegas, re, im);
    expect(count).toBe(3);
    omegas[1] = 7;
    branches.between(omegas, re, im);
    expect([...re]).toEqual([1, 7, 3]);
    expect(count).toBe(6);
  });

  it('two chambers with a duct between them resonate where their compliances and its mass do (long wave)', () => {
    // Both chambers 10 L, tube 50 mm, 0.1 m: f = (1/2π) √(1/(M C/2)).
    const chamber = chamberAdmittance({ volumeM3: 0.01, absorption: null }, AIR);
    const duct = ductBranches({ section: roundDuct(0.025), lengthM: 0.1 }, AIR);
    const mass = (1.2041 * 0.1) / (Math.PI * 0.025 ** 2);
    const compliance = 0.01 / (1.2041 * 343.2 ** 2);
    const wanted = 1 / (2 * Math.PI * Math.sqrt((mass * compliance) / 2));
    const frequencies = Array.from({ length: 2000 }, (_, i) => wanted * (0.9 + i * 1e-4));
    const weak = seriesResonator({ resistance: 1e9, mass: 0, compliance: Number.POSITIVE_INFINITY });
    const drive: Branch = { kind: 'admittance', id: 'drive', nodes: ['in', 'a'], admittance: weak };
    const got = flows(
      [drive, shunt('ca', 'a', chamber), ...stamp('d', duct, 'a', 'b'), shunt('cb', 'b', chamber)],
      'cb',
      frequencies,
    );
    const best = got.reduce((top, flow, i) => (magnitude(flow) > magnitude(got[top]!) ? i : top), 0);
    // The walls add 2 % to the mass of so narrow a tube and the air in it 1 % to the chambers.
    expect(Math.abs(frequencies[best]! / wanted - 1)).toBeLessThan(0.02);
  });
});

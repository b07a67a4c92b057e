import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  type Branch,
  capacitor,
  coil,
  type DriverEquivalent,
  exportForSimulator,
  inductor,
  parseNetlist,
  partBranches,
  resistor,
  source,
} from '../../../src/core/circuit/index.ts';
import { type Comparison, comparisonWithNgspice, netlist } from './ngspiceComparison.ts';
import { branchesOf, type Element, randomCircuit, simulatorLines } from './randomCircuit.ts';
import { succeeded } from './solved.ts';

let difference: Comparison;

beforeAll(async () => {
  difference = await comparisonWithNgspice();
}, 60_000);

describe('every node potential agrees with ngspice to 1e-9 of the largest', () => {
  it('a three-way network with drivers as gyrators', async () => {
    expect(await difference(branchesOf(threeWay), netlist(simulatorLines(threeWay)))).toBeLessThan(1e-9);
  });

  it('an inner node between lossless L and C, through and at resonance', async () => {
    const henry = 1e-3;
    const farad = 1 / (henry * (2 * Math.PI * 1000) ** 2);
    const circuit: Element[] = [
      { kind: 'V', nodes: ['n1', '0'], voltageV: 1, resistanceOhm: 0 },
      { kind: 'R', nodes: ['n1', 'n2'], ohm: 8 },
      { kind: 'L', nodes: ['n2', 'n3'], henry, dcrOhm: 0 },
      { kind: 'C', nodes: ['n3', 'n4'], farad, esrOhm: 0 },
      { kind: 'R', nodes: ['n4', '0'], ohm: 4 },
    ];
    expect(
      await difference(branchesOf(circuit), netlist(simulatorLines(circuit), '.ac lin 201 900 1100')),
    ).toBeLessThan(1e-9);
  });

  it('random circuits of 5 to 40 parts (seed 20260101)', async () => {
    await fc.assert(
      fc.asyncProperty(randomCircuit, async (elements) => {
        expect(await difference(branchesOf(elements), netlist(simulatorLines(elements)))).toBeLessThan(1e-9);
      }),
      { seed: 20260101, numRuns: 60 },
    );
  }, 60_000);
});

describe('exportForSimulator', () => {
  const parts = succeeded(
    parseNetlist(`V1 in 0
      L1 in W 2.2m dcr=0.3
      C1 W 0 33u esr=0.05
      R1 W w.z 6.8
      C2 w.z 0 22u
      J1 in t0
      C3 t0 t1 4.7u
      L2 t1 0 0.25m dcr=0.2
      LS1 W 0 woofer
      LS2 0 t1 "dome tweeter"`),
  );
  const amplifiers = [{ id: 'V1', voltageV: 2.83, resistanceOhm: 0.1 }];
  const woofer = {
    reOhm: 5.8,
    leH: 0.4e-3,
    semiInductance: null,
    motional: { ohm: 40, farad: 350e-6, henry: 28e-3 },
  };
  const tweeter = { reOhm: 5.6, leH: 0.03e-3, semiInductance: null, motional: null };
  const semi = { kOhmSn: 0.03, exponent: 0.62 };

  /** The same circuit as branches of ours. */
  const branches = (driver: DriverEquivalent): Branch[] => [
    source('V1', ['in', '0'], 2.83, 0.1),
    ...parts.flatMap(partBranches),
    coil('LS1 coil', ['W', 'emf'], driver),
    resistor('LS1 losses', ['emf', '0'], 40),
    capacitor('LS1 mass', ['emf', '0'], { farad: 350e-6, esrOhm: 0 }),
    inductor('LS1 compliance', ['emf', '0'], { henry: 28e-3, dcrOhm: 0, coreLossTangent: 0 }),
    coil('LS2 coil', ['t1', '0'], tweeter),
  ];
  const nodes = ['in', 'W', 't0', 't1'];

  it('means the same to ngspice, drivers included', async () => {
    const { text, remarks } = exportForSimulator(parts, {
      title: 'two ways',
      amplifiers,
      drivers: new Map<string, DriverEquivalent>([
        ['woofer', woofer],
        ['dome tweeter', tweeter],
      ]),
      lowHz: 10,
      highHz: 20000,
    });
    expect(remarks).toEqual([]);
    expect(await difference(branches(woofer), text, nodes)).toBeLessThan(1e-9);
  });

  it('carries a semi-inductance as a ladder, half a per cent off at most', async () => {
    const driver = { ...woofer, semiInductance: semi };
    const { text, remarks } = exportForSimulator(parts, {
      title: 'two ways',
      amplifiers,
      drivers: new Map<string, DriverEquivalent>([
        ['woofer', driver],
        ['dome tweeter', tweeter],
      ]),
      lowHz: 10,
      highHz: 20000,
    });
    expect(remarks).toEqual([]);
    const stated = Number(/at most ([\d.]+) % off/.exec(text)?.[1]) / 100;
    expect(stated).toBeLessThan(0.005);
    const off = await difference(branches(driver), text, nodes);
    expect(off).toBeLessThan(stated);
    expect(off).toBeGreaterThan(1e-6);
  });
});

const threeWay: Element[] = [
  { kind: 'V', nodes: ['amp', '0'], voltageV: 2.83, resistanceOhm: 0.08 },
  { kind: 'L', nodes: ['amp', 'w1'], henry: 2.2e-3, dcrOhm: 0.25 },
  { kind: 'C', nodes: ['w1', '0'], farad: 68e-6, esrOhm: 0.05 },
  { kind: 'R', nodes: ['w1', 'we'], ohm: 5.6 },
  { kind: 'G', primary: ['we', '0'], secondary: ['wm', '0'], gyrationS: 0.0025 },
  { kind: 'C', nodes: ['wm', 'wb'], farad: 4e-8, esrOhm: 0 },
  { kind: 'R', nodes: ['wm', '0'], ohm: 2e5 },
  { kind: 'C', nodes: ['wb', '0'], farad: 3e-7, esrOhm: 0 },
  { kind: 'L', nodes: ['wb', '0'], henry: 60, dcrOhm: 400 },
  { kind: 'C', nodes: ['amp', 'm1'], farad: 47e-6, esrOhm: 0 },
  { kind: 'L', nodes: ['m1', '0'], henry: 3e-3, dcrOhm: 0.5 },
  { kind: 'L', nodes: ['m1', 'm2'], henry: 0.4e-3, dcrOhm: 0.2 },
  { kind: 'C', nodes: ['m2', '0'], farad: 6.8e-6, esrOhm: 0 },
  { kind: 'R', nodes: ['m2', 'me'], ohm: 7.5 },
  // Connected the other way round.
  { kind: 'G', primary: ['0', 'me'], secondary: ['mm', '0'], gyrationS: 0.0012 },
  { kind: 'C', nodes: ['mm', '0'], farad: 1e-8, esrOhm: 0 },
  { kind: 'R', nodes: ['mm', '0'], ohm: 1e5 },
  { kind: 'C', nodes: ['amp', 't1'], farad: 4.7e-6, esrOhm: 0 },
  { kind: 'L', nodes: ['t1', '0'], henry: 0.22e-3, dcrOhm: 0.3 },
  { kind: 'R', nodes: ['t1', '0'], ohm: 8.2 },
];

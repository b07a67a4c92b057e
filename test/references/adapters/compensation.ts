import {
  type AdmittanceBranch,
  angularFrequency,
  type Complexes,
  capacitor,
  coil,
  coilConjugate,
  compileCircuit,
  inductor,
  inputImpedance,
  lPadValues,
  motionalElements,
  type NodeSolution,
  resistor,
  resonanceConjugate,
  solveCircuit,
  source,
  tabulateAdmittances,
  trapElements,
} from '../../../src/core/circuit/index.ts';
import type { Adapter } from '../adapter.ts';
import { asNumber, asNumbers, dbOfAmplitude, magnitude, ratio, scaled } from '../convert.ts';

/** Solves a circuit with 1 V at node `in`. */
function solved(branches: readonly AdmittanceBranch[], frequenciesHz: readonly number[]): NodeSolution {
  const compiled = compileCircuit([source('V1', ['in', '0'], 1, 0), ...branches]);
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems));
  const omegas = Float64Array.from(frequenciesHz, angularFrequency);
  const solution = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, omegas));
  if (!solution.ok) throw new Error(JSON.stringify(solution.problems));
  return solution.value;
}

const magnitudesOf = ({ re, im }: Complexes): number[] => Array.from(re, (x, f) => magnitude({ re: x, im: im[f]! }));
const impedances = (branches: readonly AdmittanceBranch[], frequenciesHz: readonly number[]): number[] =>
  magnitudesOf(inputImpedance(solved(branches, frequenciesHz), 'V1'));
const plainCoil = (id: string, nodes: readonly [string, string], henry: number): AdmittanceBranch =>
  inductor(id, nodes, { henry, dcrOhm: 0, coreLossTangent: 0 });

const forTheCoil: Adapter = {
  family: 'comp-zobel',
  requires: ['Re_ohm', 'Le_mH'],
  run: ({ Re_ohm, Le_mH }) => {
    const [reOhm, leH] = [asNumber(Re_ohm), scaled(asNumber(Le_mH), -3)];
    const network = coilConjugate(reOhm, leH);
    const branches = [
      coil('LS1', ['in', '0'], { reOhm, leH, semiInductance: null }),
      resistor('R1', ['in', 'a'], network.ohm),
      capacitor('C1', ['a', '0'], { farad: network.farad, esrOhm: 0 }),
    ];
    return {
      R_ohm: network.ohm,
      C_uF: scaled(network.farad, 6),
      Z_total_ohm_at_100_1k_10k: impedances(branches, [100, 1000, 10000]),
    };
  },
};

const forTheResonance: Adapter = {
  family: 'comp-notch',
  requires: ['Re_ohm', 'fs_Hz', 'Qms', 'Qes', 'f_Hz'],
  run: ({ Re_ohm, fs_Hz, Qms, Qes, f_Hz }) => {
    const driver = { reOhm: asNumber(Re_ohm), fsHz: asNumber(fs_Hz), qms: asNumber(Qms), qes: asNumber(Qes) };
    const [motional, network] = [motionalElements(driver), resonanceConjugate(driver)];
    const branches = [
      resistor('Re', ['in', 'emf'], driver.reOhm),
      resistor('Rm', ['emf', '0'], motional.ohm),
      capacitor('Cm', ['emf', '0'], { farad: motional.farad, esrOhm: 0 }),
      plainCoil('Lm', ['emf', '0'], motional.henry),
      resistor('R1', ['in', 'a'], network.ohm),
      plainCoil('L1', ['a', 'b'], network.henry),
      capacitor('C1', ['b', '0'], { farad: network.farad, esrOhm: 0 }),
    ];
    return {
      L_mH: scaled(network.henry, 3),
      C_uF: scaled(network.farad, 6),
      R_ohm: network.ohm,
      Z_total_ohm: impedances(branches, asNumbers(f_Hz)),
    };
  },
};

const pad: Adapter = {
  family: 'comp-lpad',
  requires: ['A_dB', 'Z_ohm'],
  run: ({ A_dB, Z_ohm }) => {
    const { seriesOhm, shuntOhm } = lPadValues(asNumber(A_dB), asNumber(Z_ohm), 'at-driver');
    return { Rseries_ohm: seriesOhm, Rparallel_ohm: shuntOhm };
  },
};

const trap: Adapter = {
  family: 'comp-trap',
  requires: ['Z_ohm', 'f0_Hz', 'Q_tank', 'R_ohm'],
  run: ({ Z_ohm, f0_Hz, Q_tank, R_ohm }) => {
    const centreHz = asNumber(f0_Hz);
    const { ohm, henry, farad } = trapElements({ centreHz, q: asNumber(Q_tank), ohm: asNumber(R_ohm) });
    const branches = [
      resistor('R1', ['in', 'out'], ohm),
      plainCoil('L1', ['in', 'out'], henry),
      capacitor('C1', ['in', 'out'], { farad, esrOhm: 0 }),
      resistor('load', ['out', '0'], asNumber(Z_ohm)),
    ];
    const around = [ratio(centreHz, 2), centreHz, ratio(centreHz, 0.5)];
    const [half, dip, twice] = magnitudesOf(solved(branches, around).potential('out')).map(dbOfAmplitude);
    return {
      L_mH: scaled(henry, 3),
      C_uF: scaled(farad, 6),
      dip_dB: asNumber(dip),
      dB_at_f0_half: asNumber(half),
      dB_at_f0_times2: asNumber(twice),
    };
  },
};

export const adapters: readonly Adapter[] = [forTheCoil, forTheResonance, pad, trap];

import {
  equilibriumRiseK,
  hotCoilLossDb,
  hotCoilOhm,
  hotResistanceRatio,
  temperatureRiseK,
} from '../../../src/core/acoustics/index.ts';
import {
  type AdmittanceBranch,
  angularFrequency,
  branchPower,
  capacitor,
  compileCircuit,
  resistor,
  solveCircuit,
  source,
  tabulateAdmittances,
} from '../../../src/core/circuit/index.ts';
import {
  type ProgrammeBand,
  programmeMean,
  programmeSharesBetween,
  programmeTotal,
} from '../../../src/core/design/limits/index.ts';
import type { Adapter, Json } from '../adapter.ts';
import { asNumber, asNumbers, ratio } from '../convert.ts';

/** One answer for a number, a list of them for a list. */
const each = (x: Json | undefined, answer: (value: number) => Json): Json =>
  Array.isArray(x) ? asNumbers(x).map(answer) : answer(asNumber(x));

const hotCoil: Adapter = {
  family: 'lim-thermal',
  requires: ['dT_K', 'alpha20_per_K'],
  run: ({ dT_K, alpha20_per_K }) => {
    const alphaPerK = asNumber(alpha20_per_K);
    return {
      Re_ratio: each(dT_K, (riseK) => hotResistanceRatio(riseK, alphaPerK)),
      dB_loss_constant_voltage: each(dT_K, (riseK) => hotCoilLossDb(riseK, alphaPerK)),
    };
  },
};

const heating: Adapter = {
  family: 'thermal',
  requires: ['P_W', 'R_coil_K_W', 'tau_coil_s', 'R_magnet_K_W', 'tau_magnet_s', 't_s'],
  run: ({ P_W, R_coil_K_W, tau_coil_s, R_magnet_K_W, tau_magnet_s, t_s }) => {
    const path = [
      { resistanceKPerW: asNumber(R_coil_K_W), timeConstantS: asNumber(tau_coil_s) },
      { resistanceKPerW: asNumber(R_magnet_K_W), timeConstantS: asNumber(tau_magnet_s) },
    ];
    return { dT_K: each(t_s, (timeS) => temperatureRiseK(asNumber(P_W), path, timeS)) };
  },
};

/** Power that a source of so many volts leaves in the resistor `coil`, W, at each frequency. */
function coilPowersW(branches: readonly AdmittanceBranch[], voltageV: number, frequenciesHz: readonly number[]) {
  const compiled = compileCircuit([source('V1', ['in', '0'], voltageV, 0), ...branches]);
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems));
  const omegas = Float64Array.from(frequenciesHz, angularFrequency);
  const solution = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, omegas));
  if (!solution.ok) throw new Error(JSON.stringify(solution.problems));
  return Array.from(branchPower(solution.value, 'coil'));
}

const settled: Adapter = {
  family: 'thermal',
  requires: ['V_rms', 'Re_cold_ohm', 'Rt_K_W', 'alpha_1_K'],
  run: ({ V_rms, Re_cold_ohm, Rt_K_W, alpha_1_K }) => {
    const [voltageV, coldOhm, alphaPerK] = [asNumber(V_rms), asNumber(Re_cold_ohm), asNumber(alpha_1_K)];
    const powerW = (ohm: number): number => coilPowersW([resistor('coil', ['in', '0'], ohm)], voltageV, [1000])[0]!;
    const riseK = equilibriumRiseK(powerW(coldOhm), asNumber(Rt_K_W), alphaPerK);
    const hotOhm = hotCoilOhm(coldOhm, riseK, alphaPerK);
    return {
      dT_K: riseK,
      Re_hot_ohm: hotOhm,
      P_W: powerW(hotOhm),
      compression_mass_region_dB: hotCoilLossDb(riseK, alphaPerK),
    };
  },
};

const bandsOf = (f_third_oct_Hz: Json | undefined, level_dB: Json | undefined): ProgrammeBand[] => {
  const levels = asNumbers(level_dB);
  return asNumbers(f_third_oct_Hz).map((centreHz, i) => ({ centreHz, levelDb: levels[i]! }));
};

const shares: Adapter = {
  family: 'thermal',
  requires: ['f_third_oct_Hz', 'level_dB', 'edges_Hz'],
  run: ({ f_third_oct_Hz, level_dB, edges_Hz }) => {
    const bands = bandsOf(f_third_oct_Hz, level_dB);
    const found = programmeSharesBetween(bands, asNumbers(edges_Hz));
    return {
      share_low: found[0]!,
      ...(found.length === 3 ? { share_mid: found[1]! } : {}),
      share_high: found.at(-1)!,
      sum_linear: programmeTotal(bands),
    };
  },
};

const behindCapacitor: Adapter = {
  family: 'thermal',
  requires: ['f_third_oct_Hz', 'level_dB', 'V_rms_total', 'C_F', 'R_ohm'],
  run: ({ f_third_oct_Hz, level_dB, V_rms_total, C_F, R_ohm }) => {
    const bands = bandsOf(f_third_oct_Hz, level_dB);
    const centres = bands.map(({ centreHz }) => centreHz);
    const [voltageV, ohm] = [asNumber(V_rms_total), asNumber(R_ohm)];
    const behind = [
      capacitor('C1', ['in', 'a'], { farad: asNumber(C_F), esrOhm: 0 }),
      resistor('coil', ['a', '0'], ohm),
    ];
    const powerW = programmeMean(coilPowersW(behind, voltageV, centres), bands);
    const directW = programmeMean(coilPowersW([resistor('coil', ['in', '0'], ohm)], voltageV, centres), bands);
    return { P_W: powerW, P_if_direct_W: directW, fraction: ratio(powerW, directW) };
  },
};

export const adapters: readonly Adapter[] = [hotCoil, heating, settled, shares, behindCapacitor];

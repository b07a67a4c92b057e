import {
  angularFrequency,
  type Branch,
  branchPower,
  capacitor,
  compileCircuit,
  inductor,
  logSensitivity,
  type NodeSolution,
  powerDerivatives,
  resistor,
  sensitivityPerCent,
  solveAdjoint,
  solveCircuit,
  source,
  tabulateAdmittances,
} from '../../../src/core/circuit/index.ts';
import { boundsAround, NO_LIMITS, optimise, preferredChoices } from '../../../src/core/design/optimise/index.ts';
import { sweepGrid } from '../../../src/core/design/sweepGrid.ts';
import { crossoverTrial, trialLevelsDb, tryValues } from '../../../src/core/design/trial/index.ts';
import type { Result } from '../../../src/core/messages/problem.ts';
import type { SpeakerModel } from '../../../src/core/speaker/model.ts';
import type { Adapter, Inputs } from '../adapter.ts';
import { asNumber, asText, degFromRad } from '../convert.ts';

const KEYS = [
  'source_v',
  'l1_h',
  'dcr1_ohm',
  'c1_f',
  'rload_ohm',
  'rbridge_ohm',
  'l2_h',
  'c2_f',
  'frequency_hz',
  'quantity',
];

/** The circuit that the cases describe: source at 1; L1 with DCR1 1-2; C1 2-0; L2 2-3; C2 3-0; load 3-0; bridge 1-3. */
function circuit(inputs: Inputs): Branch[] {
  const value = (key: string): number => asNumber(inputs[key]);
  return [
    source('V1', ['1', '0'], value('source_v'), 0),
    inductor('L1', ['1', '2'], { henry: value('l1_h'), dcrOhm: value('dcr1_ohm'), coreLossTangent: 0 }),
    capacitor('C1', ['2', '0'], { farad: value('c1_f'), esrOhm: 0 }),
    inductor('L2', ['2', '3'], { henry: value('l2_h'), dcrOhm: 0, coreLossTangent: 0 }),
    capacitor('C2', ['3', '0'], { farad: value('c2_f'), esrOhm: 0 }),
    resistor('Rload', ['3', '0'], value('rload_ohm')),
    resistor('Rbridge', ['1', '3'], value('rbridge_ohm')),
  ];
}

function solved(inputs: Inputs): NodeSolution {
  const compiled = compileCircuit(circuit(inputs));
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems));
  const omegas = Float64Array.of(angularFrequency(asNumber(inputs.frequency_hz)));
  const solution = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, omegas));
  if (!solution.ok) throw new Error(JSON.stringify(solution.problems));
  return solution.value;
}

const VALUES = [
  { id: 'L1', name: 'henry' },
  { id: 'L1', name: 'dcrOhm' },
  { id: 'C1', name: 'farad' },
  { id: 'Rload', name: 'ohm' },
  { id: 'Rbridge', name: 'ohm' },
  { id: 'L2', name: 'henry' },
  { id: 'C2', name: 'farad' },
] as const;

const quantities: Adapter = {
  family: 'adjoint',
  requires: KEYS,
  run: (inputs) => {
    const solution = solved(inputs);
    const quantity = asText(inputs.quantity);
    if (quantity === 'power') {
      const power = (id: string): number => asNumber(branchPower(solution, id)[0]);
      const [byC1] = powerDerivatives(solution, 'L1', [{ id: 'C1', name: 'farad' }]);
      return {
        p_dcr1_w: power('L1'),
        p_load_w: power('Rload'),
        p_bridge_w: power('Rbridge'),
        dp_dcr1_dlnc1_w: asNumber(byC1?.[0]),
      };
    }
    if (quantity !== 'log-sensitivity') throw new TypeError(`no such quantity: ${quantity}`);
    const output = solution.potential('3');
    const adjoint = solveAdjoint(solution, [{ node: '3', weight: 1 }]);
    const sensitivities = VALUES.map((value) => logSensitivity(adjoint, output, value));
    const perCent = sensitivities.map(({ re, im }) => sensitivityPerCent({ re: re[0]!, im: im[0]! }));
    return {
      h_re: asNumber(output.re[0]),
      h_im: asNumber(output.im[0]),
      order_l1_dcr1_c1_rload_rbridge_l2_c2_re: sensitivities.map(({ re }) => asNumber(re[0])),
      order_im: sensitivities.map(({ im }) => asNumber(im[0])),
      db_per_percent: perCent.map(({ db }) => db),
      deg_per_percent: perCent.map(({ phaseRad }) => degFromRad(phaseRad)),
    };
  },
};

const ROUNDED_KEYS = [
  'r_ohm',
  'fc_hz',
  'grid_low_hz',
  'grid_high_hz',
  'grid_points_log',
  'target_l1_h',
  'target_c1_f',
  'target_l2_h',
];

/** A coil, a capacitor across and a coil into a resistor, on an ideal source. */
function lowPass(inputs: Inputs): SpeakerModel {
  const value = (key: string): number => asNumber(inputs[key]);
  const coil = { kind: 'inductor', note: '', dcrOhm: 0, coreLossTangent: 0 } as const;
  return {
    air: { densityKgPerM3: 1.2, soundSpeedMPerS: 343 },
    amplifiers: [{ id: 'V1', voltageV: 1, resistanceOhm: 0 }],
    parts: [
      { kind: 'amplifier', id: 'V1', nodes: ['1', '0'], note: '' },
      { ...coil, id: 'L1', nodes: ['1', '2'], henry: value('target_l1_h') },
      { kind: 'capacitor', id: 'C1', nodes: ['2', '0'], note: '', farad: value('target_c1_f'), esrOhm: 0 },
      { ...coil, id: 'L2', nodes: ['2', '3'], henry: value('target_l2_h') },
      { kind: 'resistor', id: 'R1', nodes: ['3', '0'], note: '', ohm: value('r_ohm'), ratedPowerW: null },
    ],
    speakers: [],
    chambers: [],
    ports: [],
    passiveRadiators: [],
    radiation: 'half-space',
  };
}

function need<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

const rounding: Adapter = {
  family: 'adjoint',
  requires: ROUNDED_KEYS,
  run: (inputs) => {
    const value = (key: string): number => asNumber(inputs[key]);
    const frequenciesHz = sweepGrid(value('grid_low_hz'), value('grid_high_hz'), value('grid_points_log'));
    const variables = ['L1', 'C1', 'L2'].map((partId) => ({ partId }));
    const trial = need(crossoverTrial({ model: lowPass(inputs), frequenciesHz, variables }));
    const curve = { kind: 'voltage', nodes: ['3', '0'], amplifierId: 'V1' } as const;
    const levelsDb = trialLevelsDb(need(tryValues(trial, trial.start)), curve);
    const target = { curve, levelsDb, levelIsFree: false, weights: levelsDb.map(() => 1) };
    const bounds = boundsAround(trial, 10);
    const choices = need(preferredChoices(trial, bounds, { resistor: 'E12', capacitor: 'E12', inductor: 'E12' }));
    const { rounded, preferred } = need(
      optimise(
        { trial, targets: [target], bounds, limits: NO_LIMITS },
        { starts: 1, seed: 1, criterion: 'greatest', choices },
      ),
    );
    const [l1, c1, l2] = preferred?.values ?? [];
    return {
      nearest_error_db: asNumber(rounded?.greatestDb),
      best_error_db: asNumber(preferred?.greatestDb),
      best_l1_h: asNumber(l1),
      best_c1_f: asNumber(c1),
      best_l2_h: asNumber(l2),
    };
  },
};

export const adapters: readonly Adapter[] = [quantities, rounding];

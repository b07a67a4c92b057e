import {
  type Branch,
  compileCircuit,
  inputImpedance,
  solveCircuit,
  tabulateAdmittances,
} from '../../../../src/core/circuit/index.ts';
import type { ImpedanceSweep } from '../../../../src/core/design/fits/index.ts';
import { randomStream } from '../../../../src/core/math/index.ts';
import { airBranches } from '../../../../src/core/speaker/airBranches.ts';
import { driverBranches } from '../../../../src/core/speaker/driverBranches.ts';
import type { DriverParameters, ModelChamber, ModelPort, SpeakerModel } from '../../../../src/core/speaker/model.ts';

export const AIR = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 };

/** An invented woofer: fs 38 Hz, Qms 4.2, Qes 0.42, Re 5.8 Ω, Sd 215 cm², Mms 24 g. */
const omegaS = 2 * Math.PI * 38;
export const WOOFER: DriverParameters = {
  reOhm: 5.8,
  leH: 0.45e-3,
  semiInductance: null,
  mmsKg: 0.024,
  cmsMPerN: 1 / (omegaS ** 2 * 0.024),
  rmsKgPerS: (omegaS * 0.024) / 4.2,
  blTm: Math.sqrt((omegaS * 0.024 * 5.8) / 0.42),
  sdM2: 0.0215,
};

export const TRUTH = { reOhm: 5.8, fsHz: 38, qms: 4.2, qes: 0.42, qts: (4.2 * 0.42) / 4.62 };

const NOWHERE = { distanceM: 1, pistonRadiusM: 0, offAxisDeg: 0, edges: null };

export interface Made {
  readonly parameters?: DriverParameters;
  readonly chamber?: Omit<ModelChamber, 'id'>;
  readonly port?: Omit<ModelPort, 'id' | 'chamberId' | 'radiation'>;
  /** In series with the terminals. */
  readonly further?: (node: string) => Branch[];
  readonly countPoints?: number;
  readonly fromHz?: number;
  readonly toHz?: number;
  readonly phase?: boolean;
}

const shunted: NonNullable<Made['further']> = (inner) => [
  {
    kind: 'admittance',
    id: 'shunt',
    nodes: ['t', inner],
    admittance: (omegas, re, im) => {
      re.fill(1 / 4);
      for (let i = 0; i < omegas.length; i++) im[i] = -1 / (omegas[i]! * 0.4e-3);
    },
  },
];

/** Who made the data: the three coils that can be entered, and one that cannot. */
export const COILS: Readonly<Record<string, Made>> = {
  plain: {},
  semi: { parameters: { ...WOOFER, leH: 0, semiInductance: { kOhmSn: 0.0084, exponent: 0.68 } } },
  both: { parameters: { ...WOOFER, leH: 0.1e-3, semiInductance: { kOhmSn: 0.013, exponent: 0.6 } } },
  shunted: { parameters: { ...WOOFER, leH: 0.2e-3 }, further: shunted },
};

/** An invented driver of any size with a coil of any of the forms that can be entered, and how it was swept. */
export function drawnDriver(seed: number): { readonly made: Made; readonly truth: typeof TRUTH } {
  const random = randomStream(seed);
  const between = (from: number, to: number): number => from * (to / from) ** random.uniform();
  const [reOhm, fsHz, qms, qes] = [between(2.5, 16), between(18, 1500), between(1, 15), between(0.2, 2)];
  const form = Math.floor(3 * random.uniform());
  // The reactance of the coil is a fraction of Re up to somewhat more, three octaves and more above the resonance.
  const atOmega = 2 * Math.PI * 1000 * Math.max(1, fsHz / 300);
  const reactanceOhm = between(0.2, 1.2) * reOhm;
  const exponent = 0.5 + 0.45 * random.uniform();
  const omega = 2 * Math.PI * fsHz;
  const parameters: DriverParameters = {
    reOhm,
    leH: form === 1 ? 0 : ((form === 2 ? 0.5 : 1) * reactanceOhm) / atOmega,
    semiInductance: form === 0 ? null : { kOhmSn: reactanceOhm / atOmega ** exponent, exponent },
    mmsKg: 0.02,
    cmsMPerN: 1 / (omega ** 2 * 0.02),
    rmsKgPerS: (omega * 0.02) / qms,
    blTm: Math.sqrt((omega * 0.02 * reOhm) / qes),
    sdM2: 0.02,
  };
  const countPoints = Math.round(between(60, 400));
  const made = { parameters, phase: random.uniform() < 0.5, countPoints, fromHz: between(5, 12) };
  return { made, truth: { reOhm, fsHz, qms, qes, qts: (qms * qes) / (qms + qes) } };
}

/** Impedance of a driver, free or in a box, by the solver for circuits: knows nothing of the formulas that are fitted. */
export function madeSweep(made: Made = {}): ImpedanceSweep {
  const { parameters = WOOFER, chamber, port, countPoints = 120, fromHz = 10, toHz = 20000, phase = true } = made;
  const frequenciesHz = Float64Array.from(
    { length: countPoints },
    (_, i) => fromHz * (toHz / fromHz) ** (i / (countPoints - 1)),
  );
  const model: SpeakerModel = {
    air: AIR,
    amplifiers: [],
    parts: [],
    speakers: [],
    chambers: chamber === undefined ? [] : [{ id: 'box', ...chamber }],
    ports: port === undefined ? [] : [{ id: 'port', chamberId: 'box', radiation: NOWHERE, ...port }],
    passiveRadiators: [],
    radiation: 'half-space',
  };
  const speaker = {
    partId: 'LS1',
    parameters,
    chamberId: chamber === undefined ? null : 'box',
    radiation: NOWHERE,
    measured: null,
  };
  const inner = made.further === undefined ? 't' : 'inner';
  const compiled = compileCircuit([
    { kind: 'source', id: 'test', nodes: ['t', '0'], voltageV: 1, resistanceOhm: 0 },
    ...(made.further?.(inner) ?? []),
    ...driverBranches(speaker, inner, '0'),
    ...airBranches(model),
  ]);
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems));
  const omegas = frequenciesHz.map((f) => 2 * Math.PI * f);
  const solved = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, omegas));
  if (!solved.ok) throw new Error(JSON.stringify(solved.problems));
  const { re, im } = inputImpedance(solved.value, 'test');
  return {
    frequenciesHz,
    magnitudesOhm: re.map((a, i) => Math.hypot(a, im[i]!)),
    phasesRad: phase ? re.map((a, i) => Math.atan2(im[i]!, a)) : null,
  };
}

/** The sweep with noise on ln|Z| and phase (radians), both of deviation `sd`. */
export function noisy(sweep: ImpedanceSweep, sd: number, seed: number): ImpedanceSweep {
  const random = randomStream(seed);
  return {
    frequenciesHz: sweep.frequenciesHz,
    magnitudesOhm: sweep.magnitudesOhm.map((ohm) => ohm * Math.exp(sd * random.normal())),
    phasesRad: sweep.phasesRad?.map((angle) => angle + sd * random.normal()) ?? null,
  };
}

export const expectValue = <T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: unknown },
): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

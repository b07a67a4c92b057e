import type { Result } from '../../messages/problem.ts';
import { succeed } from '../../messages/problem.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import { lineMouthBranch, portBranch, radiatorBranch } from '../../speaker/nodeNames.ts';
import { simulate } from '../../speaker/simulate.ts';
import type { ComplexCurve } from '../../speaker/simulation.ts';
import type { Row } from './build.ts';
import { type Candidate, logsByKey, solverOf, startFrom } from './candidate.ts';
import { type Hypothesis, rebuilt } from './hypothesis.ts';
import { nominalBuild } from './nominalBuild.ts';

/** A response as it was taken of the same channel, all others silent. */
export interface TakenResponse {
  /** Ascending, above 0. */
  readonly frequenciesHz: ArrayLike<number>;
  /** dB re 20 µPa at the drive of `model`; a shift of some dB of all of them counts for little. */
  readonly levelsDb: ArrayLike<number>;
  /** The design as read for the place where the microphone stood. */
  readonly model: SpeakerModel;
}

/** Compares a taken response with what builds would give at the microphone. */
export interface ResponseCheck {
  /** -2 ln of the probability of the response, up to what all builds share. */
  costOf(candidate: Candidate): number;
  /** Level that a candidate gives at each reading, dB re 20 µPa. */
  levelsDbOf(candidate: Candidate): Float64Array;
}

const RANGE_HZ = [40, 18_000] as const;
const PER_OCTAVE = 6;
/** Spread of a reading about a prediction without break-up and reflections, dB, and of the level as a whole (common practice, no source). */
const SPREAD_DB = 1.2;
const LEVEL_SPREAD_DB = 3;
const REFERENCE_PA = 20e-6;
const LEAST_PA = 1e-9;
/** Readings far off are not as unlikely as a normal spread has it: Student's t of so many degrees. */
const FREEDOM = 4;

/**
 * Prepares a taken response for comparison, at sixth octaves from 40 Hz to 18 kHz. A response says little against a prediction
 * that knows no break-up and no reflections, and yet enough to hear that two drivers work against each other.
 * Problems: those of solving the model.
 */
export function responseCheck(
  taken: TakenResponse,
  amplifierId: string,
  unknowns: Hypothesis['unknowns'],
): Result<ResponseCheck> {
  const { model } = taken;
  const { frequenciesHz, levelsDb } = sixthOctaves(taken);
  const omegas = frequenciesHz.map((hz) => 2 * Math.PI * hz);
  const build = nominalBuild(model, amplifierId, omegas);
  if (!build.ok) return build;
  const simulation = simulate(model, frequenciesHz);
  if (!simulation.ok) return simulation;
  const healthy: Hypothesis = { faults: [], build: build.value, unknowns, wild: [] };
  const { speakers, ports, passiveRadiators, lines } = simulation.value;
  const cones = build.value.drivers.map(({ partId }) => {
    const speaker = speakers.find((s) => s.partId === partId)!;
    return over(speaker.pressure, speaker.volumeVelocity);
  });
  const outlets = [
    ...ports.map((port) => ({ branch: portBranch(port.id), per: over(port.pressure, port.volumeVelocity) })),
    ...lines.map((line) => ({ branch: lineMouthBranch(line.id), per: over(line.pressure, line.volumeVelocity) })),
    ...passiveRadiators.map((r) => ({ branch: radiatorBranch(r.id), per: over(r.pressure, r.volumeVelocity) })),
  ];
  const { voltageV, resistanceOhm: ohm, drive } = model.amplifiers.find(({ id }) => id === amplifierId)!;
  const driven = { re: omegas.map(() => 1), im: omegas.map(() => 0) };
  drive?.(omegas, driven.re, driven.im);

  const levelsDbOf = ({ hypothesis, fit }: Candidate): Float64Array => {
    const built = rebuilt(healthy, hypothesis.faults, model);
    const solver = solverOf(built);
    const logs = startFrom(built, logsByKey({ hypothesis, fit }));
    const { z, flows, pressures } = solver.solve(logs, true);
    return Float64Array.from(omegas, (_, f) => {
      let re = 0;
      let im = 0;
      flows.forEach((flow, k) => {
        re += cones[k]!.re[f]! * flow.re[f]! - cones[k]!.im[f]! * flow.im[f]!;
        im += cones[k]!.re[f]! * flow.im[f]! + cones[k]!.im[f]! * flow.re[f]!;
      });
      solver.layout.air.forEach(({ a, b, unknown }, k) => {
        const outlet = outlets.find(({ branch }) => branch === built.build.air[k]!.id);
        if (outlet === undefined || built.build.air[k]!.isBlocked) return;
        const factor = unknown < 0 ? 1 : Math.exp(logs[unknown]!);
        const admittance = built.build.air[k]!.admittance;
        const pr = (a < 0 ? 0 : pressures[a]!.re[f]!) - (b < 0 ? 0 : pressures[b]!.re[f]!);
        const pi = (a < 0 ? 0 : pressures[a]!.im[f]!) - (b < 0 ? 0 : pressures[b]!.im[f]!);
        const ur = factor * (pr * admittance.re[f]! - pi * admittance.im[f]!);
        const ui = factor * (pr * admittance.im[f]! + pi * admittance.re[f]!);
        re += outlet.per.re[f]! * ur - outlet.per.im[f]! * ui;
        im += outlet.per.re[f]! * ui + outlet.per.im[f]! * ur;
      });
      const perVolt = Math.hypot(re, im) / Math.hypot(z.re[f]! + ohm, z.im[f]!);
      const volts = voltageV * Math.hypot(driven.re[f]!, driven.im[f]!);
      return 20 * Math.log10(Math.max(LEAST_PA, volts * perVolt) / REFERENCE_PA);
    });
  };
  return succeed({ costOf: (candidate) => missCost(levelsDb, levelsDbOf(candidate)), levelsDbOf });
}

/** -2 ln of Student's density of the misses about their common level: the median, which a dip does not move. */
function missCost(taken: Float64Array, built: Float64Array): number {
  const misses = built.map((level, f) => taken[f]! - level);
  const middle = Float64Array.from(misses).sort()[misses.length >> 1] ?? 0;
  let cost = (middle / LEVEL_SPREAD_DB) ** 2;
  for (const miss of misses) {
    cost += (FREEDOM + 1) * Math.log(1 + (miss - middle) ** 2 / (FREEDOM * SPREAD_DB ** 2));
  }
  return cost;
}

/** Pressure per volume velocity. */
function over(pressure: ComplexCurve, flow: ComplexCurve): Row {
  const re = new Float64Array(flow.re.length);
  const im = new Float64Array(flow.re.length);
  for (let f = 0; f < re.length; f++) {
    const squared = flow.re[f]! ** 2 + flow.im[f]! ** 2;
    if (squared === 0) continue;
    re[f] = (pressure.re[f]! * flow.re[f]! + pressure.im[f]! * flow.im[f]!) / squared;
    im[f] = (pressure.im[f]! * flow.re[f]! - pressure.re[f]! * flow.im[f]!) / squared;
  }
  return { re, im };
}

function sixthOctaves({ frequenciesHz, levelsDb }: TakenResponse) {
  const hz: number[] = [];
  const levels: number[] = [];
  const bands = new Map<number, { hz: number; db: number; count: number }>();
  for (let i = 0; i < frequenciesHz.length; i++) {
    const at = frequenciesHz[i]!;
    if (at < RANGE_HZ[0] || at > RANGE_HZ[1] || !Number.isFinite(levelsDb[i])) continue;
    const band = Math.round(PER_OCTAVE * Math.log2(at / 1000));
    const known = bands.get(band) ?? { hz: 0, db: 0, count: 0 };
    bands.set(band, { hz: known.hz + at, db: known.db + levelsDb[i]!, count: known.count + 1 });
  }
  for (const { hz: sum, db, count } of bands.values()) {
    hz.push(sum / count);
    levels.push(db / count);
  }
  return { frequenciesHz: Float64Array.from(hz), levelsDb: Float64Array.from(levels) };
}

import type { OutputTerm } from '../../circuit/index.ts';
import { voltageBetweenInto } from '../../circuit/index.ts';
import { blendWeight } from '../../measured/index.ts';
import { complexCurve, REFERENCE_PRESSURE_PA } from '../../speaker/complexCurve.ts';
import { blendMeasuredPressure } from '../../speaker/measuredPressure.ts';
import type { ComplexCurve } from '../../speaker/simulation.ts';
import type { Tried } from './crossoverTrial.ts';
import type { HeardPoint } from './driverPorts.ts';
import { adjointOf, complexDerivatives, realDerivatives } from './gradient.ts';

/** A curve that a trial gives. Several points: the mean of their squared pressures, as a listening window or a power is taken. */
export type TrialCurve =
  /** Sum of all that sounds, dB re 20 µPa. */
  | { readonly kind: 'sum'; readonly points: readonly number[] }
  /** What the voltage at one speaker's terminals makes, the others' terminals held at 0 V, dB re 20 µPa. */
  | { readonly kind: 'way'; readonly speakerId: string; readonly points: readonly number[] }
  /** Voltage between two nodes, dB re an amplifier's source voltage: an electrical response. */
  | { readonly kind: 'voltage'; readonly nodes: readonly [string, string]; readonly amplifierId: string };

/** dB per neper. */
export const DB_PER_NEPER = 20 / Math.LN10;
const SILENT_DB = -400;

/** One complex quantity of the circuit, and its change with each speaker's terminal voltage. */
interface Part {
  readonly value: ComplexCurve;
  /** By speaker; null where it has no part in it. */
  readonly byVoltage: readonly (ComplexCurve | null)[];
}

/** Voltage across the terminals of each speaker, V rms, in the order of the model's speakers. */
export function terminalVoltages({ trial, solution }: Tried): ComplexCurve[] {
  return trial.terminals.map(([plus, minus]) => {
    const out = complexCurve(solution.frequencyCount);
    voltageBetweenInto(out, solution, plus, minus);
    return out;
  });
}

/**
 * The sum of all pressures at a point, Pa rms, propagation included: what `simulate` calls `sum`.
 * @example trialSum(tried, 0)
 */
export const trialSum = (tried: Tried, point: number): ComplexCurve => sumAt(tried, point).value;

/** Derivatives of that sum with the logarithm of each value, Pa. */
export const trialSumDerivatives = (tried: Tried, point: number): ComplexCurve[] =>
  complexDerivatives(tried, adjointOf(tried, termsOf(tried, sumAt(tried, point).byVoltage)));

/**
 * Levels of a curve, dB; a silent point is -400 dB.
 * @example trialLevelsDb(tried, { kind: 'sum', points: [0] })
 */
export function trialLevelsDb(tried: Tried, curve: TrialCurve): Float64Array {
  return levelsOf(partsOf(tried, curve), referenceOf(tried, curve));
}

/**
 * Levels of a curve with their derivatives, dB per unit of ln p, per variable: one adjoint solve however many values and points.
 * @example trialLevelGradient(tried, { kind: 'sum', points: [0, 1, 2] }).derivatives[3]
 */
export function trialLevelGradient(
  tried: Tried,
  curve: TrialCurve,
): { readonly levelsDb: Float64Array; readonly derivatives: readonly Float64Array[] } {
  const parts = partsOf(tried, curve);
  const levelsDb = levelsOf(parts, referenceOf(tried, curve));
  // d level = (20 / ln 10) Re Σ conj(o) do / Σ |o|², which is linear in the potentials: one output with complex weights.
  const count = tried.solution.frequencyCount;
  const shares = parts.map(() => complexCurve(count));
  for (let f = 0; f < count; f++) {
    let squares = 0;
    for (const { value } of parts) squares += value.re[f]! ** 2 + value.im[f]! ** 2;
    if (squares === 0) continue;
    parts.forEach(({ value }, q) => {
      shares[q]!.re[f] = (DB_PER_NEPER * value.re[f]!) / squares;
      shares[q]!.im[f] = (-DB_PER_NEPER * value.im[f]!) / squares;
    });
  }
  const terms =
    curve.kind === 'voltage'
      ? betweenTerms(curve.nodes, shares[0]!)
      : termsOf(tried, weighted(parts, shares, tried.trial.terminals.length));
  return { levelsDb, derivatives: realDerivatives(tried, adjointOf(tried, terms)) };
}

function referenceOf({ trial }: Tried, curve: TrialCurve): number {
  if (curve.kind !== 'voltage') return REFERENCE_PRESSURE_PA;
  const amplifier = trial.model.amplifiers.find(({ id }) => id === curve.amplifierId);
  if (amplifier === undefined) throw new RangeError(`The model has no amplifier ${curve.amplifierId}.`);
  return amplifier.voltageV;
}

function levelsOf(parts: readonly Part[], reference: number): Float64Array {
  const levels = new Float64Array(parts[0]!.value.re.length);
  for (let f = 0; f < levels.length; f++) {
    let squares = 0;
    for (const { value } of parts) squares += value.re[f]! ** 2 + value.im[f]! ** 2;
    const mean = squares / (parts.length * reference * reference);
    levels[f] = mean > 1e-40 ? 10 * Math.log10(mean) : SILENT_DB;
  }
  return levels;
}

function partsOf(tried: Tried, curve: TrialCurve): readonly Part[] {
  if (curve.kind === 'voltage') {
    const value = complexCurve(tried.solution.frequencyCount);
    voltageBetweenInto(value, tried.solution, curve.nodes[0], curve.nodes[1]);
    return [{ value, byVoltage: [] }];
  }
  if (curve.points.length === 0) throw new RangeError('A curve is heard at one point at least.');
  if (curve.kind === 'sum') return curve.points.map((point) => sumAt(tried, point));
  const { speakers } = tried.trial.model;
  const k = speakers.findIndex(({ partId }) => partId === curve.speakerId);
  if (k < 0) throw new RangeError(`The model has no speaker ${curve.speakerId}.`);
  return curve.points.map((point) => sumAt(tried, point, k));
}

/** The sum at a point, or the share of it that one speaker's voltage makes. */
function sumAt(tried: Tried, point: number, only?: number): Part {
  const heard = tried.trial.ports.points[point];
  if (heard === undefined) throw new RangeError(`The trial has no listening point ${point}.`);
  const voltages = terminalVoltages(tried).map((v, k) =>
    only === undefined || only === k ? v : complexCurve(v.re.length),
  );
  const value = complexCurve(tried.solution.frequencyCount);
  const byVoltage = heard.perVolt.map((perVolt, k) => {
    addProduct(value, perVolt, voltages[k]!);
    return heard.blended.length === 0 ? perVolt : { re: perVolt.re.slice(), im: perVolt.im.slice() };
  });
  for (const cone of heard.blended) addBlended(tried, heard, cone, voltages, value, byVoltage);
  return { value, byVoltage: byVoltage.map((one, k) => (only === undefined || only === k ? one : null)) };
}

/** Adds the pressure p of a cone whose blend mixes voltages: ln p = (1 - w) ln Σ M v + w ln (T v), so dp/dv follows. */
function addBlended(
  tried: Tried,
  { model }: HeardPoint,
  { speaker: k, perVolt }: HeardPoint['blended'][number],
  voltages: readonly ComplexCurve[],
  value: ComplexCurve,
  byVoltage: readonly ComplexCurve[],
): void {
  const { omegas } = tried.trial.table;
  const lumped = complexCurve(omegas.length);
  perVolt.forEach((one, j) => {
    addProduct(lumped, one, voltages[j]!);
  });
  const pressure = { re: lumped.re.slice(), im: lumped.im.slice() };
  blendMeasuredPressure(pressure, model.speakers[k]!, voltages[k]!, model, omegas);
  const { blendHz } = model.speakers[k]!.measured!;
  for (let f = 0; f < omegas.length; f++) {
    const [re, im] = [pressure.re[f]!, pressure.im[f]!];
    value.re[f]! += re;
    value.im[f]! += im;
    const w = blendWeight(omegas[f]! / (2 * Math.PI), blendHz);
    if (w < 1) {
      const share = quotient(re * (1 - w), im * (1 - w), lumped.re[f]!, lumped.im[f]!);
      byVoltage.forEach((out, j) => {
        const [a, b] = [perVolt[j]!.re[f]!, perVolt[j]!.im[f]!];
        out.re[f]! += share.re * a - share.im * b;
        out.im[f]! += share.re * b + share.im * a;
      });
    }
    if (w > 0) {
      const share = quotient(re * w, im * w, voltages[k]!.re[f]!, voltages[k]!.im[f]!);
      byVoltage[k]!.re[f]! += share.re;
      byVoltage[k]!.im[f]! += share.im;
    }
  }
}

function quotient(re: number, im: number, byRe: number, byIm: number): { re: number; im: number } {
  const squared = byRe * byRe + byIm * byIm;
  if (squared === 0) return { re: 0, im: 0 };
  return { re: (re * byRe + im * byIm) / squared, im: (im * byRe - re * byIm) / squared };
}

function addProduct(out: ComplexCurve, a: ComplexCurve, b: ComplexCurve): void {
  for (let f = 0; f < out.re.length; f++) {
    out.re[f]! += a.re[f]! * b.re[f]! - a.im[f]! * b.im[f]!;
    out.im[f]! += a.re[f]! * b.im[f]! + a.im[f]! * b.re[f]!;
  }
}

/** Σ over the parts of share × change with each voltage. */
function weighted(parts: readonly Part[], shares: readonly ComplexCurve[], speakers: number): (ComplexCurve | null)[] {
  return Array.from({ length: speakers }, (_, k) => {
    if (parts.every(({ byVoltage }) => byVoltage[k] === null)) return null;
    const out = complexCurve(shares[0]!.re.length);
    parts.forEach(({ byVoltage }, q) => {
      if (byVoltage[k]) addProduct(out, shares[q]!, byVoltage[k]);
    });
    return out;
  });
}

/** Terms of an output Σ weight × terminal voltage. */
export const termsOf = ({ trial }: Tried, byVoltage: readonly (ComplexCurve | null)[]): OutputTerm[] =>
  byVoltage.flatMap((weight, k) => (weight === null ? [] : betweenTerms(trial.terminals[k]!, weight)));

/** Terms of an output weight × (potential of a less that of b). */
export const betweenTerms = ([a, b]: readonly [string, string], weight: ComplexCurve): OutputTerm[] => [
  { node: a, weight },
  { node: b, weight: { re: weight.re.map((x) => -x), im: weight.im.map((x) => -x) } },
];

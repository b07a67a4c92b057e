import { interpolateLogInto } from '../math/interpolateLog.ts';
import { type Finding, problem } from '../messages/problem.ts';
import type { CurveTable, MeasuredCurve } from './curveTable.ts';
import { endSlopes } from './endSlopes.ts';
import { excessDelay } from './excessDelay.ts';
import { type EndSlopes, minimumPhase } from './minimumPhase.ts';
import { propagationDelayS } from './propagationDelay.ts';
import { denseRuns, meansOfRuns } from './thinDense.ts';
import { unwrapPhase } from './unwrapPhase.ts';

const PRESSURE_REFERENCE_PA = 20e-6;

export interface PreparedCurve extends CurveTable {
  readonly phaseFrom: 'measured' | 'minimum';
  /** Delay taken out of a measured response's phase, s; null where none was taken out. */
  readonly delayRemovedS: number | null;
  /** What was assumed on the way. */
  readonly notes: readonly Finding[];
}

/**
 * Makes a measured curve into the table that the model uses: a response as Pa rms per V rms at 1 m (by 1/r from its
 * distance), an impedance in ohm; stretches denser than 1/48 octave as means of ln f, ln magnitude and phase.
 *
 * Phase: that of the file where it has one, of a response without its delay beyond minimum phase (the acoustic centre
 * comes from the geometry), else minimum phase. That one assumes that the curve goes on beyond its ends with its last
 * slope, a response at most 24 dB/octave downwards, an impedance level at the bottom and at most like a coil at the top;
 * within an octave of an end it can err by tens of degrees.
 *
 * The curve is as the document holds it: ascending frequencies above 0, lists of one length, impedance above 0; throws
 * otherwise. `soundSpeedMPerS` tells where the delay is looked for. Example: `prepareMeasured(curve, 343.2).phasesRad`.
 */
export function prepareMeasured(curve: MeasuredCurve, soundSpeedMPerS: number): PreparedCurve {
  check(curve);
  const { quantity, phasesDeg, taken } = curve;
  const raw = Float64Array.from(curve.magnitudes, (m) => Math.log(quantity === 'impedance' ? m : paPerVolt(m, curve)));
  const runs = denseRuns(curve.frequenciesHz);
  const frequenciesHz = meansOfRuns(Float64Array.from(curve.frequenciesHz, Math.log), runs).map(Math.exp);
  const logMagnitudes = meansOfRuns(raw, runs);
  const magnitudes = logMagnitudes.map(Math.exp);
  const place = { kind: 'curve' } as const;
  if (phasesDeg === null) {
    const phasesRad = minimumPhase(frequenciesHz, logMagnitudes, slopesBeyond(curve, frequenciesHz, logMagnitudes));
    const note: Finding = { ...problem('measured.minimum-phase', place, { quantity }), severity: 'note' };
    return { frequenciesHz, magnitudes, phasesRad, phaseFrom: 'minimum', delayRemovedS: null, notes: [note] };
  }
  const given = Float64Array.from(phasesDeg, (deg) => (deg * Math.PI) / 180);
  if (quantity === 'impedance') {
    const phasesRad = meansOfRuns(unwrapPhase(given), runs);
    return { frequenciesHz, magnitudes, phasesRad, phaseFrom: 'measured', delayRemovedS: null, notes: [] };
  }
  // Only what is unwrapped is taken relative to minimum phase, and it is added again: straight lines between points do.
  const least = new Float64Array(given.length);
  const leastAtMeans = minimumPhase(frequenciesHz, logMagnitudes, slopesBeyond(curve, frequenciesHz, logMagnitudes));
  interpolateLogInto(least, curve.frequenciesHz, frequenciesHz, leastAtMeans);
  const flightS = propagationDelayS(taken.distanceM, soundSpeedMPerS);
  const delayRemovedS = excessDelay(curve.frequenciesHz, given, least, raw, flightS);
  const excess = given.map((phase, i) => phase - least[i]! + 2 * Math.PI * curve.frequenciesHz[i]! * delayRemovedS);
  const phasesRad = meansOfRuns(
    wholeTurnsOff(unwrapPhase(excess), raw).map((phase, i) => phase + least[i]!),
    runs,
  );
  const note: Finding = { ...problem('measured.delay-removed', place, { delayS: delayRemovedS }), severity: 'note' };
  return { frequenciesHz, magnitudes, phasesRad, phaseFrom: 'measured', delayRemovedS, notes: [note] };
}

const paPerVolt = (levelDb: number, { taken }: MeasuredCurve): number =>
  (PRESSURE_REFERENCE_PA * 10 ** (levelDb / 20) * taken.distanceM) / taken.voltageV;

const clamp = (value: number, least: number, greatest: number): number => Math.min(greatest, Math.max(least, value));

/** The slopes with which a curve is taken to go on: its own, within what a loudspeaker or a coil can do. */
function slopesBeyond(
  { quantity }: MeasuredCurve,
  frequenciesHz: ArrayLike<number>,
  logMagnitudes: ArrayLike<number>,
): EndSlopes {
  const { low, high } = endSlopes(frequenciesHz, logMagnitudes);
  return quantity === 'response'
    ? { low: clamp(low, 0, 4), high: clamp(high, -4, 0) }
    : { low: 0, high: clamp(high, 0, 1) };
}

/** Shifts by whole turns so that the phase is nearest to 0 where the curve is loudest. */
function wholeTurnsOff(phasesRad: Float64Array, logMagnitudes: Float64Array): Float64Array {
  let loudest = 0;
  for (let i = 1; i < logMagnitudes.length; i++) if (logMagnitudes[i]! > logMagnitudes[loudest]!) loudest = i;
  const turns = 2 * Math.PI * Math.round(phasesRad[loudest]! / (2 * Math.PI));
  return phasesRad.map((phase) => phase - turns);
}

function check({ quantity, frequenciesHz, magnitudes, phasesDeg, taken }: MeasuredCurve): void {
  const n = frequenciesHz.length;
  if (n < 2 || magnitudes.length !== n || (phasesDeg !== null && phasesDeg.length !== n))
    throw new RangeError('A measured curve has two points or more and lists of one length.');
  for (let i = 0; i < n; i++) {
    if (!(frequenciesHz[i]! > (i === 0 ? 0 : frequenciesHz[i - 1]!)))
      throw new RangeError('The frequencies of a measured curve ascend from above 0.');
    if (!Number.isFinite(magnitudes[i]!) || (quantity === 'impedance' && magnitudes[i]! <= 0))
      throw new RangeError('A measured curve has magnitudes that are numbers, and an impedance above 0.');
  }
  if (!(taken.voltageV > 0 && taken.distanceM > 0)) throw new RangeError('Voltage and distance are above 0.');
}

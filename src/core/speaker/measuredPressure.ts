import { blendWeight } from '../measured/blendCurves.ts';
import { unwrapPhase } from '../measured/unwrapPhase.ts';
import { complexCurve } from './complexCurve.ts';
import type { ModelSpeaker, SpeakerModel } from './model.ts';
import { directivityFactorInto, pistonDirectivityInto } from './radiate.ts';
import type { ComplexCurve } from './simulation.ts';
import { tableOnGrid } from './tableOnGrid.ts';

/**
 * Puts a driver's measured response in the place of the model's pressure above its blend frequency, in place.
 *
 * The table is pressure per volt at 1 m on axis without its delay: times the terminal voltage, the path's 1/r and delay,
 * the piston's directivity off axis, and, for a curve taken on an infinite baffle, the cabinet's own baffle step. The two
 * are joined on log magnitude and unwrapped phase, the phase taken relative to the terminal voltage and without the delay.
 */
export function blendMeasuredPressure(
  pressure: ComplexCurve,
  speaker: ModelSpeaker,
  terminalVoltage: ComplexCurve,
  model: SpeakerModel,
  omegas: Float64Array,
): void {
  const { radiation } = speaker;
  const { blendHz, response } = speaker.measured!;
  const table = tableOnGrid(response!, omegas);
  const factor = complexCurve(omegas.length);
  if (response!.baffle === 'own') {
    // What was measured has the step in it; only the piston's own directivity is still to come.
    pistonDirectivityInto(factor, radiation, omegas, model.air.soundSpeedMPerS);
  } else {
    directivityFactorInto(factor, radiation, model, omegas);
  }
  const wrapped = new Float64Array(omegas.length);
  for (let i = 0; i < wrapped.length; i++) {
    const delay = (omegas[i]! * radiation.distanceM) / model.air.soundSpeedMPerS;
    wrapped[i] =
      Math.atan2(pressure.im[i]!, pressure.re[i]!) - Math.atan2(terminalVoltage.im[i]!, terminalVoltage.re[i]!) + delay;
  }
  const phases = unwrapPhase(wrapped);
  const beamPhases = unwrapPhase(factor.re.map((re, i) => Math.atan2(factor.im[i]!, re)));
  const turns = turnsBetween(phases, table.phasesRad, beamPhases, omegas, blendHz);
  for (let i = 0; i < omegas.length; i++) {
    const weight = blendWeight(omegas[i]! / (2 * Math.PI), blendHz);
    if (weight === 0) continue;
    const volts = Math.sqrt(terminalVoltage.re[i]! ** 2 + terminalVoltage.im[i]! ** 2);
    const beam = Math.sqrt(factor.re[i]! ** 2 + factor.im[i]! ** 2);
    const measured = (Math.exp(table.logMagnitudes[i]!) * beam * volts) / radiation.distanceM;
    const modelled = Math.sqrt(pressure.re[i]! ** 2 + pressure.im[i]! ** 2);
    const size = modelled > 0 && measured > 0 ? modelled ** (1 - weight) * measured ** weight : measured * weight;
    const delay = (omegas[i]! * radiation.distanceM) / model.air.soundSpeedMPerS;
    const measuredPhase = table.phasesRad[i]! + beamPhases[i]! + turns;
    const phase =
      phases[i]! * (1 - weight) +
      measuredPhase * weight +
      Math.atan2(terminalVoltage.im[i]!, terminalVoltage.re[i]!) -
      delay;
    pressure.re[i] = size * Math.cos(phase);
    pressure.im[i] = size * Math.sin(phase);
  }
}

/** Whole turns that bring the table's phase nearest to the model's at the blend frequency. */
function turnsBetween(
  model: Float64Array,
  table: Float64Array,
  beam: Float64Array,
  omegas: Float64Array,
  blendHz: number,
): number {
  let at = 0;
  while (at < omegas.length - 1 && omegas[at]! < 2 * Math.PI * blendHz) at++;
  const gap = model[at]! - table[at]! - beam[at]!;
  return 2 * Math.PI * Math.round(gap / (2 * Math.PI));
}

import { branchPower, voltageBetweenInto } from '../../circuit/index.ts';
import { complexCurve } from '../../speaker/complexCurve.ts';
import type { ComplexCurve } from '../../speaker/simulation.ts';
import type { Tried } from './crossoverTrial.ts';
import { adjointOf, logDerivativeInto, realDerivatives } from './gradient.ts';
import { betweenTerms, terminalVoltages, termsOf } from './trialCurve.ts';

/**
 * Mean power lost in a part with a sine at the set drive, W over the sweep: a resistor, capacitor or inductor, or a speaker's
 * coil resistance. Equals `partPowersW` of `simulate`.
 * @example trialPower(tried, 'R1')
 */
export function trialPower(tried: Tried, partId: string): Float64Array {
  const k = tried.trial.model.speakers.findIndex((speaker) => speaker.partId === partId);
  if (k < 0) return branchPower(tried.solution, partId);
  const { reOhm } = tried.trial.model.speakers[k]!.parameters;
  const { re, im } = coilCurrent(tried, k);
  return re.map((a, f) => reOhm * (a * a + im[f]! ** 2));
}

/**
 * Derivatives of that power with ln p, W, per variable over the sweep.
 * @example trialPowerDerivatives(tried, 'R1')[2]
 */
export function trialPowerDerivatives(tried: Tried, partId: string): Float64Array[] {
  const { trial, solution, table, compiled, values } = tried;
  const k = trial.model.speakers.findIndex((speaker) => speaker.partId === partId);
  const count = solution.frequencyCount;
  if (k >= 0) {
    // P = Re |I|², I = Σ c v: dP = 2 Re (Re conj(I) Σ c dv)
    const { reOhm } = trial.model.speakers[k]!.parameters;
    const current = coilCurrent(tried, k);
    const weights = trial.ports.coilCurrents[k]!.map((perVolt) => timesConjugate(perVolt, current, 2 * reOhm));
    return realDerivatives(tried, adjointOf(tried, termsOf(tried, weights)));
  }
  const row = table.rows[compiled.indexOf.get(partId) ?? -1];
  if (row === undefined || row === null) throw new RangeError(`${partId} is no part that takes up power.`);
  // P = Re(y) |v|²: dP = 2 Re(y) Re(conj(v) dv) + |v|² Re(dy)
  const voltage = complexCurve(count);
  voltageBetweenInto(voltage, solution, row.branch.nodes[0], row.branch.nodes[1]);
  const weight = complexCurve(count);
  for (let f = 0; f < count; f++) {
    weight.re[f] = 2 * row.re[f]! * voltage.re[f]!;
    weight.im[f] = -2 * row.re[f]! * voltage.im[f]!;
  }
  const derivatives = realDerivatives(tried, adjointOf(tried, betweenTerms(row.branch.nodes, weight)));
  trial.variables.forEach((variable, i) => {
    if (variable.partId !== partId) return;
    const own = complexCurve(count);
    logDerivativeInto(own, row.branch, values[i]!, variable.dcrExponent ?? 0, table.omegas);
    for (let f = 0; f < count; f++) {
      derivatives[i]![f]! += (voltage.re[f]! ** 2 + voltage.im[f]! ** 2) * own.re[f]!;
    }
  });
  return derivatives;
}

function coilCurrent(tried: Tried, k: number): ComplexCurve {
  const voltages = terminalVoltages(tried);
  const out = complexCurve(tried.solution.frequencyCount);
  tried.trial.ports.coilCurrents[k]!.forEach(({ re, im }, j) => {
    const v = voltages[j]!;
    for (let f = 0; f < out.re.length; f++) {
      out.re[f]! += re[f]! * v.re[f]! - im[f]! * v.im[f]!;
      out.im[f]! += re[f]! * v.im[f]! + im[f]! * v.re[f]!;
    }
  });
  return out;
}

/** factor × a × conj(b) */
const timesConjugate = (a: ComplexCurve, b: ComplexCurve, factor: number): ComplexCurve => ({
  re: a.re.map((x, f) => factor * (x * b.re[f]! + a.im[f]! * b.im[f]!)),
  im: a.re.map((x, f) => factor * (a.im[f]! * b.re[f]! - x * b.im[f]!)),
});

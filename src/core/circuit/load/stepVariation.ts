import type { Admittance } from '../branch.ts';
import { adaptiveConductance, type ConductanceCurve } from './adaptiveConductance.ts';

const LOW_OMEGA = 0.01;
const HIGH_OMEGA = 1e8;
/** Below this fall over the last decade (a power of frequency) a resistive path is what is left. */
const FLAT_POWER = 0.02;
const TAIL_DECADES = 4;
const TAIL_PER_DECADE = 40;
const FIRST_S = 1e-9;
const LAST_S = 300;
const PER_OCTAVE = 600;

// A load is linear and passive, so its current is the voltage folded with the impulse response y(t) of its admittance, and for
// |v| <= V the current stays below V times the integral of |y|; the voltage that changes sign with y reaches it. The step response
// s(t) has y as its slope: the integral is the total variation of s, a jump at t = 0 (a resistive path, G∞) counted with it.
// y is causal, so its cosine transform is the conductance alone: y(t) = (2/π) ∫ (G − G∞) cos ωt dω for t > 0. With G straight between
// its points the integral is a sum over the changes of slope: −(2/(π t²)) Σ m_k (cos ω_k t − cos ω_(k+1) t), exactly.

/**
 * Total variation of the current after a unit step of voltage, siemens: the greatest current that a voltage within ±1 V can draw.
 *
 * Holds for loads that change between 2 mHz and 16 MHz; error 1e-4 for resonances of Q up to 10, 5e-4 at 20, and 1e-3 behind a
 * semi-inductance, which never quite settles. null where a capacitance lies straight across the source, whose current nothing bounds.
 * Source: bounded-input bound (derived above); the question was put by M. Otala and P. Huttunen, "Peak Current Requirement of Commercial Loudspeaker
 * Systems", 1987, J. Audio Eng. Soc. 35, 455 (from memory).
 * @example stepVariationS(resistor('R1', ['a', '0'], 8).admittance) // 0.125
 */
export function stepVariationS(admittance: Admittance): number | null {
  if (grows(admittance)) return null;
  const inside = adaptiveConductance(admittance, LOW_OMEGA, HIGH_OMEGA);
  const { curve, jumpS } = withTail(inside);
  const slopes = curve.omegas.slice(1).map((omega, k) => {
    const rise = curve.conductances[k + 1]! - curve.conductances[k]!;
    return rise / (omega - curve.omegas[k]!);
  });
  // Weight of cos(ω_k t): slope of the interval behind less that of the interval before.
  const weights = curve.omegas.map((_, k) => (slopes[k] ?? 0) - (slopes[k - 1] ?? 0));
  let variation = Math.abs(jumpS);
  let first = true;
  const block = new Float64Array(PER_OCTAVE + 1);
  for (let fromS = FIRST_S; fromS < LAST_S; fromS *= 2) {
    impulseInto(block, curve.omegas, weights, fromS, fromS / PER_OCTAVE);
    // Up to the first instant y is taken as constant.
    if (first) variation += Math.abs(block[0]!) * fromS;
    first = false;
    variation += integralOfModulus(block, fromS / PER_OCTAVE);
  }
  return variation;
}

/** Does the admittance still rise at the top, as of a capacitor without resistance? */
function grows(admittance: Admittance): boolean {
  const [re, im] = [new Float64Array(2), new Float64Array(2)];
  admittance(Float64Array.of(HIGH_OMEGA, 10 * HIGH_OMEGA), re, im);
  return Math.hypot(re[1]!, im[1]!) > 5 * Math.hypot(re[0]!, im[0]!);
}

/** The conductance less its end value, and falling to 0 at its end as it fell over its last decade. */
function withTail({ omegas, conductances }: ConductanceCurve): { curve: ConductanceCurve; jumpS: number } {
  const last = conductances.at(-1)!;
  const before = conductances[omegas.findIndex((omega) => omega >= HIGH_OMEGA / 10)]!;
  const power = last > 0 && before > 0 ? Math.log10(before / last) : 2;
  if (power < FLAT_POWER) return { curve: { omegas, conductances: conductances.map((g) => g - last) }, jumpS: last };
  const count = TAIL_DECADES * TAIL_PER_DECADE;
  const tail = Array.from({ length: count }, (_, k) => 10 ** ((k + 1) / TAIL_PER_DECADE));
  return {
    curve: {
      omegas: [...omegas, ...tail.map((factor) => HIGH_OMEGA * factor)],
      conductances: [...conductances, ...tail.map((factor, k) => (k === count - 1 ? 0 : last * factor ** -power))],
    },
    jumpS: 0,
  };
}

/** y at out.length instants from `fromS` on, `stepS` apart. */
function impulseInto(
  out: Float64Array,
  omegas: readonly number[],
  weights: readonly number[],
  fromS: number,
  stepS: number,
): void {
  out.fill(0);
  for (let k = 0; k < omegas.length; k++) {
    const weight = weights[k]!;
    if (weight === 0) continue;
    const [turnRe, turnIm] = [Math.cos(omegas[k]! * stepS), Math.sin(omegas[k]! * stepS)];
    let re = weight * Math.cos(omegas[k]! * fromS);
    let im = weight * Math.sin(omegas[k]! * fromS);
    for (let n = 0; n < out.length; n++) {
      out[n]! += re;
      const next = re * turnRe - im * turnIm;
      im = re * turnIm + im * turnRe;
      re = next;
    }
  }
  for (let n = 0; n < out.length; n++) out[n]! *= -2 / (Math.PI * (fromS + n * stepS) ** 2);
}

/** Trapezoids of |y|, a cell with a zero in it as the two triangles of a straight line. */
function integralOfModulus(values: Float64Array, stepS: number): number {
  let sum = 0;
  for (let n = 1; n < values.length; n++) {
    const a = values[n - 1]!;
    const b = values[n]!;
    sum += a * b >= 0 ? Math.abs(a + b) / 2 : (a * a + b * b) / (2 * Math.abs(a - b));
  }
  return sum * stepS;
}

import { findMinimum } from '../../math/findMinimum.ts';
import type { Admittance } from '../branch.ts';
import { stepVariationS } from './stepVariation.ts';

/** What a load can draw from voltages within ±peakV. All currents are peaks, A. */
export interface CurrentReserve {
  /** By the worst voltage of any shape. */
  readonly worstA: number;
  /** By the worst sine of the band. */
  readonly sineA: number;
  readonly sineAtHz: number;
  readonly ratio: number;
  /** The resistor that draws as much at its peak, ohm. */
  readonly resistanceOhm: number;
}

const PER_DECADE = 200;

/**
 * Greatest current that a load draws from a voltage within ±`peakV`, of any shape and as a sine between the ends of `sineBandHz`.
 *
 * `programmeHz` is the corner of a first-order low-pass that no programme gets past (null: none); without one every edge is
 * infinitely steep. Accuracy as `stepVariationS`. null where nothing bounds the current: a capacitor straight across the source.
 * Practice keeps 2 to 3 times the sine's current in reserve (common practice, no source).
 * @example currentReserve(load, { peakV: 40, sineBandHz: [20, 20000], programmeHz: null })?.ratio
 */
export function currentReserve(
  admittance: Admittance,
  options: {
    readonly peakV: number;
    readonly sineBandHz: readonly [number, number];
    readonly programmeHz: number | null;
  },
): CurrentReserve | null {
  const { peakV, sineBandHz, programmeHz } = options;
  const variationS = stepVariationS(programmeHz === null ? admittance : behindLowPass(admittance, programmeHz));
  if (variationS === null || !(variationS > 0)) return null;
  const { modulusS, atHz } = greatestModulus(admittance, sineBandHz);
  return {
    worstA: peakV * variationS,
    sineA: peakV * modulusS,
    sineAtHz: atHz,
    ratio: variationS / modulusS,
    resistanceOhm: 1 / variationS,
  };
}

const behindLowPass =
  (admittance: Admittance, cornerHz: number): Admittance =>
  (omegas, outRe, outIm) => {
    admittance(omegas, outRe, outIm);
    for (let f = 0; f < omegas.length; f++) {
      const x = omegas[f]! / (2 * Math.PI * cornerHz);
      const scale = 1 / (1 + x * x);
      const re = outRe[f]!;
      const im = outIm[f]!;
      outRe[f] = (re + x * im) * scale;
      outIm[f] = (im - x * re) * scale;
    }
  };

function greatestModulus(admittance: Admittance, [lowHz, highHz]: readonly [number, number]) {
  const count = Math.max(2, Math.ceil(PER_DECADE * Math.log10(highHz / lowHz)));
  const ratio = (highHz / lowHz) ** (1 / count);
  const omegas = Float64Array.from({ length: count + 1 }, (_, k) => 2 * Math.PI * lowHz * ratio ** k);
  const [re, im] = [new Float64Array(count + 1), new Float64Array(count + 1)];
  admittance(omegas, re, im);
  const moduli = re.map((g, f) => Math.hypot(g, im[f]!));
  const top = moduli.indexOf(Math.max(...moduli));
  const [oneRe, oneIm] = [new Float64Array(1), new Float64Array(1)];
  const negative = (logOmega: number): number => {
    admittance(Float64Array.of(Math.exp(logOmega)), oneRe, oneIm);
    return -Math.hypot(oneRe[0]!, oneIm[0]!);
  };
  const from = omegas[Math.max(0, top - 1)]!;
  const to = omegas[Math.min(count, top + 1)]!;
  const found = findMinimum(negative, Math.log(from), Math.log(to), 1e-8);
  if (moduli[top]! >= -found.value) return { modulusS: moduli[top]!, atHz: omegas[top]! / (2 * Math.PI) };
  return { modulusS: -found.value, atHz: Math.exp(found.x) / (2 * Math.PI) };
}

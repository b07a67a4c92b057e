import { type ProgrammeBand, programmeBandEdgesHz, programmeShares } from './programmeSpectrum.ts';

/**
 * Usual ratio of peak to rms of music, dB: 10 to 18 (from memory), 12 being dense music. A start that the person changes.
 */
export const USUAL_CREST_DB = 12;

/**
 * Voltage of programme whose peaks reach those of the sine at the set drive, V rms: V √2 / 10^(crest/20). A 12 dB crest leaves
 * an eighth of the sine's power.
 * @example programmeVoltageV(20, 12) // 7.1
 */
export const programmeVoltageV = (driveV: number, crestDb: number): number =>
  driveV * Math.SQRT2 * 10 ** (-crestDb / 20);

/**
 * Long-term power of programme in an element, W, from the powers (W) that it takes from the bands' own sines of the
 * programme's whole rms voltage: the sum over the bands of share times power.
 */
export function programmeMean(powersW: readonly number[], bands: readonly ProgrammeBand[]): number {
  return programmeShares(bands).reduce((sum, share, i) => sum + share * powersW[i]!, 0);
}

/**
 * Mean of a curve within each band over the logarithm of frequency (trapezoids, straight between the sweep's points, held
 * beyond its ends): what equal power per octave inside the band sees.
 */
export function bandMeans(
  values: Float64Array,
  frequenciesHz: Float64Array,
  bands: readonly ProgrammeBand[],
): number[] {
  const integral = cumulative(values, frequenciesHz);
  return bands.map(({ centreHz }) => {
    const [lowHz, highHz] = programmeBandEdgesHz(centreHz);
    return (integral(highHz) - integral(lowHz)) / Math.log(highHz / lowHz);
  });
}

/**
 * Long-term power of programme in an element, W, from the mean powers `powersW` that it takes from a sine at the set drive over
 * the sweep: a coil's, a crossover resistor's. `crestDb` as in `programmeVoltageV`.
 *
 * Incoherent sum over third-octave bands; the bands' levels are the programme's at the filter's or amplifier's input.
 * @example programmePowerW(simulation.partPowersW.get('LS2')!, simulation.frequenciesHz, USUAL_PROGRAMME, USUAL_CREST_DB)
 */
export const programmePowerW = (
  powersW: Float64Array,
  frequenciesHz: Float64Array,
  bands: readonly ProgrammeBand[],
  crestDb: number,
): number => programmeVoltageV(1, crestDb) ** 2 * programmeMean(bandMeans(powersW, frequenciesHz, bands), bands);

/** Integral of a curve over ln f from its first frequency, at any frequency. */
function cumulative(values: Float64Array, frequenciesHz: Float64Array): (hz: number) => number {
  const count = frequenciesHz.length;
  const sums = new Float64Array(count);
  for (let i = 1; i < count; i++) {
    const width = Math.log(frequenciesHz[i]! / frequenciesHz[i - 1]!);
    sums[i] = sums[i - 1]! + 0.5 * (values[i]! + values[i - 1]!) * width;
  }
  return (hz) => {
    const last = count - 1;
    if (hz <= frequenciesHz[0]!) return values[0]! * Math.log(hz / frequenciesHz[0]!);
    if (hz >= frequenciesHz[last]!) return sums[last]! + values[last]! * Math.log(hz / frequenciesHz[last]!);
    let low = 0;
    let high = last;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (frequenciesHz[middle]! <= hz) low = middle;
      else high = middle;
    }
    const part = Math.log(hz / frequenciesHz[low]!);
    const share = part / Math.log(frequenciesHz[high]! / frequenciesHz[low]!);
    const value = values[low]! + share * (values[high]! - values[low]!);
    return sums[low]! + 0.5 * (values[low]! + value) * part;
  };
}

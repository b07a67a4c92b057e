import type { AirProperties } from '../../acoustics/airProperties.ts';
import type { DriverParameters } from '../../acoustics/driver/driverParameters.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { sealedInVolume } from '../alignments/sealedAlignment.ts';
import { drivenDriver } from './drivenDriver.ts';

/** The sealed edge of the map: one number per volume. */
export interface SealedCurve {
  readonly volumesM3: Float64Array;
  readonly qtc: Float64Array;
  readonly fcHz: Float64Array;
  /** −3 dB (half power) re the pass band. */
  readonly cutOffHz: Float64Array;
  /** Highest level over the pass band, 0 without a peak. */
  readonly peakDb: Float64Array;
  /** Greatest at and above the cut-off at the drive, one way, peak. */
  readonly excursionPeakM: Float64Array;
}

/**
 * A driver in sealed boxes of ascending apparent volumes: the map's edge, where the port has closed.
 *
 * Lossless and unfilled, coil inductance left out; fc = fs √(1 + Vas/V), Qtc = QT √(1 + Vas/V). Excursion re its value at rest in the box is
 * 1/√((1 − ν²)² + ν²/Qtc²), greatest at ν² = 1 − 1/(2 Qtc²) or at the cut-off. Numbers not above 0 are the Problem
 * `design.map-unreadable`. Source: R. H. Small, "Closed-Box Loudspeaker Systems", J. Audio Eng. Soc. 20, 1972.
 *
 * Example: sealedCurve({ driver, alike: 1, air, driveV: 2.83, seriesOhm: 0, volumesM3 })
 */
export const sealedCurve = (input: {
  readonly driver: DriverParameters;
  readonly alike: number;
  readonly air: AirProperties;
  readonly driveV: number;
  readonly seriesOhm: number;
  readonly volumesM3: Float64Array;
}): Result<SealedCurve> => {
  const { volumesM3 } = input;
  const driver = drivenDriver(input.driver, input);
  const unreadable = fail<SealedCurve>(problem('design.map-unreadable', { kind: 'driver' }));
  if (driver === null || !volumesM3.every((value) => value > 0 && Number.isFinite(value))) return unreadable;
  const count = volumesM3.length;
  const curve = {
    volumesM3,
    qtc: new Float64Array(count),
    fcHz: new Float64Array(count),
    cutOffHz: new Float64Array(count),
    peakDb: new Float64Array(count),
    excursionPeakM: new Float64Array(count),
  };
  for (let i = 0; i < count; i++) {
    const { alpha, qtc, fcHz, f3Hz, response } = sealedInVolume(driver, volumesM3[i]!);
    const least = 1 - 1 / (2 * qtc * qtc);
    const at = Math.max(Math.max(least, 0), response.f3OverFc ** 2);
    curve.qtc[i] = qtc;
    curve.fcHz[i] = fcHz;
    curve.cutOffHz[i] = f3Hz;
    curve.peakDb[i] = 20 * Math.log10(response.peakRatio);
    curve.excursionPeakM[i] = driver.restExcursionPeakM / (1 + alpha) / Math.sqrt((1 - at) ** 2 + at / (qtc * qtc));
  }
  const { volumesM3: _, ...numbers } = curve;
  return Object.values(numbers).every((values) => values.every(Number.isFinite)) ? succeed(curve) : unreadable;
};

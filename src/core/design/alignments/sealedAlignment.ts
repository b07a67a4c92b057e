import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import type { DriverNumbers } from './driverNumbers.ts';
import { type SealedResponse, sealedResponse } from './sealedResponse.ts';

/** A driver in a sealed box. */
export interface SealedAlignment {
  /** Vas over box volume. */
  readonly alpha: number;
  /** Apparent volume, m³. */
  readonly volumeM3: number;
  readonly fcHz: number;
  readonly qtc: number;
  readonly f3Hz: number;
  readonly response: SealedResponse;
}

/**
 * What a sealed box of a given apparent volume (m³) makes of a driver: fc = fs √(1 + α), Qtc = Qts √(1 + α), α = Vas/V.
 *
 * Lossless, unfilled box; amplifier without output resistance (else pass a Qts that includes it).
 * Source: R. H. Small, "Closed-Box Loudspeaker Systems", J. Audio Eng. Soc. 20, 1972, 798.
 *
 * Example: fs 35 Hz, Qts 0.65, Vas 45 L in 30 L: fc 55.3 Hz, Qtc 1.03
 */
export const sealedInVolume = (driver: DriverNumbers, volumeM3: number): SealedAlignment => {
  const alpha = driver.vasM3 / volumeM3;
  const rise = Math.sqrt(1 + alpha);
  const fcHz = driver.fsHz * rise;
  const qtc = driver.qts * rise;
  const response = sealedResponse(qtc);
  return { alpha, volumeM3, fcHz, qtc, f3Hz: fcHz * response.f3OverFc, response };
};

/**
 * The sealed box that gives a driver a wanted Qtc: α = (Qtc/Qts)² − 1, V = Vas/α.
 *
 * A Qtc that is not above Qts is the Problem `acoustics.qtc-not-above-qts`: a box only stiffens. Assumptions and source as
 * `sealedInVolume`.
 *
 * Example: fs 28 Hz, Qts 0.38, Vas 80 L, Qtc 0.7071: 32.5 L, fc 52.1 Hz
 */
export const sealedForQtc = (driver: DriverNumbers, qtc: number): Result<SealedAlignment> => {
  const alpha = (qtc / driver.qts) ** 2 - 1;
  if (!(alpha > 0)) return fail(problem('acoustics.qtc-not-above-qts', { kind: 'driver' }, { qtc, qts: driver.qts }));
  return succeed(sealedInVolume(driver, driver.vasM3 / alpha));
};

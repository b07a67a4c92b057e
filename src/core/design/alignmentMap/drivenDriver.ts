import type { AirProperties } from '../../acoustics/airProperties.ts';
import { driverFigures } from '../../acoustics/driver/driverFigures.ts';
import type { DriverParameters } from '../../acoustics/driver/driverParameters.ts';

/** A driver as a map sees it: its numbers with what is in series with the coil, and how far a voltage moves it. */
export interface DrivenDriver {
  readonly fsHz: number;
  readonly qts: number;
  readonly vasM3: number;
  readonly sdM2: number;
  /** Excursion at zero frequency in free air at the drive, one-way peak, m: Bl V √2 Cms/(Re + series). */
  readonly restExcursionPeakM: number;
}

/**
 * A driver's numbers for a map: Vas in the air of the box, QT with a resistance in series with the coil (amplifier, cable, crossover coil), `driveV` rms.
 *
 * null unless every number is finite and above 0 (drive and series resistance: not below 0). `alike` drivers in one chamber on
 * the same voltage count as one with their areas together.
 */
export const drivenDriver = (
  driver: DriverParameters,
  at: { readonly air: AirProperties; readonly driveV: number; readonly seriesOhm: number; readonly alike: number },
): DrivenDriver | null => {
  const reOhm = driver.reOhm + at.seriesOhm;
  const { fsHz, qts, vasM3 } = driverFigures({ ...driver, reOhm }, at.air);
  const numbers = { fsHz, qts, vasM3: vasM3 * at.alike, sdM2: driver.sdM2 * at.alike };
  const restExcursionPeakM = (driver.blTm * at.driveV * Math.SQRT2 * driver.cmsMPerN) / reOhm;
  const { reOhm: ownOhm, blTm, mmsKg, cmsMPerN, rmsKgPerS } = driver;
  const positive = [ownOhm, blTm, mmsKg, cmsMPerN, rmsKgPerS, ...Object.values(numbers)].every(
    (value) => value > 0 && Number.isFinite(value),
  );
  const drivable = at.seriesOhm >= 0 && restExcursionPeakM >= 0 && Number.isFinite(restExcursionPeakM);
  return positive && drivable ? { ...numbers, restExcursionPeakM } : null;
};

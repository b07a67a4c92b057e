import { airProperties } from '../../../core/acoustics/airProperties.ts';
import { type DerivedDriver, deriveDriver } from '../../../core/acoustics/driver/deriveDriver.ts';
import { defaultAir } from '../../../core/document/defaults.ts';
import type { Driver } from '../../../core/document/schema.ts';
import type { Result } from '../../../core/messages/problem.ts';

const known = new WeakMap<Driver['entered'], Result<DerivedDriver>>();

/** A driver's complete numbers and what its sheet contradicts; asked once for each set of entered numbers. */
export function readDriver(driver: Driver): Result<DerivedDriver> {
  const before = known.get(driver.entered);
  if (before) return before;
  const air = airProperties(defaultAir);
  const read = driver.sheetAir
    ? deriveDriver(driver.entered, driver.sheetAir)
    : air.ok
      ? deriveDriver(driver.entered, air.value)
      : air;
  known.set(driver.entered, read);
  return read;
}

import type { DerivedDriver } from '../../../core/acoustics/driver/deriveDriver.ts';
import type { Driver } from '../../../core/document/schema.ts';
import type { Result } from '../../../core/messages/problem.ts';
import { derivedOf } from '../../../core/speaker/derivedOf.ts';

const known = new WeakMap<Driver['entered'], Result<DerivedDriver>>();

/** A driver's complete numbers and what its sheet contradicts; asked once for each set of entered numbers. */
export function readDriver(driver: Driver): Result<DerivedDriver> {
  const before = known.get(driver.entered);
  if (before) return before;
  const read = derivedOf(driver);
  known.set(driver.entered, read);
  return read;
}

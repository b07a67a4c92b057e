import { airProperties, type DerivedDriver, deriveDriver } from '../acoustics/index.ts';
import { defaultAir } from '../document/defaults.ts';
import type { Driver } from '../document/schema.ts';
import type { Result } from '../messages/problem.ts';

/** A driver's complete numbers and what its sheet contradicts; a sheet that does not name its air holds in the default air. */
export function derivedOf({ entered, sheetAir }: Pick<Driver, 'entered' | 'sheetAir'>): Result<DerivedDriver> {
  if (sheetAir !== null) return deriveDriver(entered, sheetAir);
  const air = airProperties(defaultAir);
  return air.ok ? deriveDriver(entered, air.value) : air;
}

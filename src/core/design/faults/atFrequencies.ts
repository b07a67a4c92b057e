import type { Build, Row } from './build.ts';

/** The same build at some of its frequencies. */
export function atFrequencies(build: Build, picks: readonly number[]): Build {
  const pick = (values: Float64Array): Float64Array => Float64Array.from(picks, (i) => values[i]!);
  const picked = ({ re, im }: Row): Row => ({ re: pick(re), im: pick(im) });
  return {
    ...build,
    omegas: pick(build.omegas),
    drivers: build.drivers.map((driver) => ({
      ...driver,
      coil: picked(driver.coil),
      added: driver.added && picked(driver.added),
    })),
    air: build.air.map((branch) => ({ ...branch, admittance: picked(branch.admittance) })),
  };
}

import type { DriverParameters } from '../../acoustics/driver/driverParameters.ts';

/**
 * Two equal drivers face to face or one behind the other, moving as one, as the parameters of a single one.
 *
 * Mass, resistance of the suspension and stiffness double, the area stays: fs and all Q as one driver, Vas half. Wired in parallel Re, Le
 * and the semi-inductance halve and Bl stays; in series they double and so does Bl. For equal volts the parallel pair is as loud as one
 * driver and draws twice the current. Small air between them: 2 L of it makes the cones differ by 3 % at 60 Hz (for that, put both in the
 * circuit with the chamber between). Source: two coupled pistons, derived.
 *
 * Example: isobaricPair(driver, 'parallel').mmsKg = 2 * driver.mmsKg
 */
export const isobaricPair = (driver: DriverParameters, wiring: 'parallel' | 'series'): DriverParameters => {
  const electrical = wiring === 'parallel' ? 0.5 : 2;
  const { semiInductance } = driver;
  return {
    reOhm: electrical * driver.reOhm,
    leH: electrical * driver.leH,
    semiInductance: semiInductance && { ...semiInductance, kOhmSn: electrical * semiInductance.kOhmSn },
    blTm: wiring === 'parallel' ? driver.blTm : 2 * driver.blTm,
    mmsKg: 2 * driver.mmsKg,
    cmsMPerN: driver.cmsMPerN / 2,
    rmsKgPerS: 2 * driver.rmsKgPerS,
    sdM2: driver.sdM2,
  };
};

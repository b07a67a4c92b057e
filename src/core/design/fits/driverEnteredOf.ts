import type { DriverEntered } from '../../acoustics/index.ts';
import type { DriverFit } from './driverFit.ts';
import type { VasFit } from './fitVas.ts';

/**
 * Fitted values in the shape of a data sheet, so that they can stand beside it: Re, fs, Qms, Qes and the coil, and with `vas` Vas
 * and Sd, from which the rest follows. Resonance and Qs are those of both sweeps where `vas` is given.
 *
 * Example: driverEnteredOf(fit, null).fsHz
 */
export function driverEnteredOf(
  fit: DriverFit,
  vas: { readonly fit: VasFit; readonly sdM2: number } | null,
): DriverEntered {
  const { reOhm, fsHz, qms, qes } = vas?.fit ?? fit;
  const { leH, semiInductance } = fit.coil;
  return {
    reOhm: reOhm.value,
    fsHz: fsHz.value,
    qms: qms.value,
    qes: qes.value,
    ...(leH === null ? {} : { leH: leH.value }),
    ...(semiInductance === null
      ? {}
      : { semiInductance: { kOhmSn: semiInductance.kOhmSn.value, exponent: semiInductance.exponent.value } }),
    ...(vas === null ? {} : { vasM3: vas.fit.vasM3.value, sdM2: vas.sdM2 }),
  };
}

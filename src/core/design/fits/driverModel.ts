import { addCoil, type CoilForm } from './coilForms.ts';

/** What hangs on a cone beside its own parts, as factors and shares of these: 1 and 0 for free air. */
export interface ConeLoad {
  /** Moving mass over that of the driver alone. */
  readonly mass: number;
  /** Mechanical impedance of the air behind it over ωs Mms, real and imaginary, or null. */
  readonly air: ((x: number) => { readonly re: number; readonly im: number }) | null;
}

export const FREE_AIR: ConeLoad = { mass: 1, air: null };

/** Places of Re, fs, Qms, Qes in the values of a fit; the coil's follow from `COIL_AT`. */
export const RE_AT = 0;
export const FS_AT = 1;
export const QMS_AT = 2;
export const QES_AT = 3;
export const COIL_AT = 4;

/**
 * Impedance of a driver by its resonance and Qs, ohm, into `re` and `im` (both 0 before).
 *
 * Z = Re + coil + (Re/Qes)/(1/Qms + jx m + 1/(jx) + air), x = f/fs: the cone's velocity per force over ωs Mms. In free air the usual
 * parallel resonance Re Qms/Qes. Small signals, constant compliance. Source: R. H. Small, J. Audio Eng. Soc. 20 (1972) 383.
 */
export function driverModelInto(
  re: Float64Array,
  im: Float64Array,
  omegas: Float64Array,
  values: ArrayLike<number>,
  coil: CoilForm,
  load: ConeLoad,
  leadOhm: number,
): void {
  const reOhm = values[RE_AT]!;
  const omegaS = 2 * Math.PI * values[FS_AT]!;
  const loss = 1 / values[QMS_AT]!;
  const motor = reOhm / values[QES_AT]!;
  for (let i = 0; i < omegas.length; i++) {
    const x = omegas[i]! / omegaS;
    let a = loss;
    let b = x * load.mass - 1 / x;
    if (load.air !== null) {
      const air = load.air(x);
      a += air.re;
      b += air.im;
    }
    const square = a * a + b * b;
    re[i]! += reOhm + leadOhm + (motor * a) / square;
    im[i]! -= (motor * b) / square;
  }
  addCoil(coil, values, COIL_AT, omegas, re, im);
}

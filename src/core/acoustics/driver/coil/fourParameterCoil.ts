import type { Complex } from '../../../math/complex.ts';

/** Z = Kr ω^Xr + j Ki ω^Xi; each K in ohm times s to the power of its exponent. */
export interface FourParameterCoil {
  readonly resistiveK: number;
  readonly resistiveExponent: number;
  readonly reactiveK: number;
  readonly reactiveExponent: number;
}

/**
 * Impedance of the four-parameter form at one angular frequency, ohm.
 *
 * Fits measurements best, but no real circuit behaves so unless both exponents are n and Ki/Kr = tan(nπ/2): trust it inside
 * the band that it was fitted to. Source: J. R. Wright, "An Empirical Model for Loudspeaker Motor Impedance", JAES 38, 1990,
 * as quoted by Leach 2002.
 */
export const fourParameterCoilOhm = (coil: FourParameterCoil, omega: number): Complex => ({
  re: coil.resistiveK * omega ** coil.resistiveExponent,
  im: coil.reactiveK * omega ** coil.reactiveExponent,
});

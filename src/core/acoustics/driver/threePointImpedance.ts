/** Resonance and Q of a driver in free air as three points of its impedance curve give them. */
export interface ThreePointResult {
  readonly fsHz: number;
  readonly qms: number;
  readonly qes: number;
  readonly qts: number;
  /** |Z| at which the two side frequencies are to be read, ohm. */
  readonly sideOhm: number;
}

/** |Z| at which to read the side frequencies: Re √(Zmax/Re), ohm. */
export const sideImpedanceOhm = (reOhm: number, zMaxOhm: number): number => Math.sqrt(reOhm * zMaxOhm);

/**
 * fs and the Qs from Re, the height of the resonance peak and the two frequencies where |Z| = √(Re Zmax).
 *
 * r0 = Zmax/Re, fs = √(f1 f2), Qms = fs √r0/(f2 − f1), Qes = Qms/(r0 − 1). Exact where coil inductance does not matter.
 * Source: R. H. Small, "Direct-Radiator Loudspeaker System Analysis", J. Audio Eng. Soc. 20, 1972 (from memory, rederived).
 *
 * Example: Re 6 Ω, Zmax 37.5 Ω, 28 and 52 Hz: fs 38.2 Hz, Qts 0.636
 */
export const threePointImpedance = (
  reOhm: number,
  zMaxOhm: number,
  lowerHz: number,
  upperHz: number,
): ThreePointResult => {
  const r0 = zMaxOhm / reOhm;
  const fsHz = Math.sqrt(lowerHz * upperHz);
  const qms = (fsHz * Math.sqrt(r0)) / (upperHz - lowerHz);
  const qes = qms / (r0 - 1);
  return { fsHz, qms, qes, qts: (qms * qes) / (qms + qes), sideOhm: sideImpedanceOhm(reOhm, zMaxOhm) };
};

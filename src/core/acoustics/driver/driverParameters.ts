/** A driver's lumped parameters, complete: mechanical side, coil, size. Mms includes the air load. */
export interface DriverParameters {
  readonly reOhm: number;
  /** Series coil, henry; 0 where only a semi-inductance is given. */
  readonly leH: number;
  /** Z = K (jω)^n in series with Re and Le; null for none. */
  readonly semiInductance: { readonly kOhmSn: number; readonly exponent: number } | null;
  readonly blTm: number;
  readonly mmsKg: number;
  readonly cmsMPerN: number;
  readonly rmsKgPerS: number;
  readonly sdM2: number;
}

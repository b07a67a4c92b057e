/** A curve ready for computing: ascending frequencies, magnitudes above 0, unwrapped phase in radians; equal lengths. */
export interface CurveTable {
  readonly frequenciesHz: Float64Array;
  readonly magnitudes: Float64Array;
  readonly phasesRad: Float64Array;
}

export type CurveQuantity = 'response' | 'impedance';

/** A curve as it was read or saved: dB re 20 µPa for a response, ohm for an impedance; frequencies ascending, above 0. */
export interface MeasuredCurve {
  readonly quantity: CurveQuantity;
  readonly frequenciesHz: readonly number[];
  readonly magnitudes: readonly number[];
  readonly phasesDeg: readonly number[] | null;
  /** Drive in V rms and distance in m that hold for a response. */
  readonly taken: { readonly voltageV: number; readonly distanceM: number };
}

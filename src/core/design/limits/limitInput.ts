/** What can come to its end as the drive rises. */
export type LimitKind =
  | 'excursion'
  | 'radiator-excursion'
  | 'port-speed'
  | 'mouth-speed'
  | 'coil-heat'
  | 'rated-power'
  | 'amplifier-voltage'
  | 'amplifier-current';

/** One quantity of one element over the sweep at the set drive, a sine of each frequency, with its ceiling. */
export interface LimitedCurve {
  readonly kind: LimitKind;
  /** Part of the network, port, passive radiator or line. */
  readonly id: string;
  /** Never negative, in the unit of `limit`: m one-way peak, m/s peak, W mean, V peak, A peak. */
  readonly values: Float64Array;
  /** Above 0. */
  readonly limit: number;
  /** How the quantity grows with the drive: in proportion, or with its square (powers). */
  readonly growsWith: 'drive' | 'square';
}

/** A loudspeaker at the set drive against its limits. Everything is linear: all curves scale with the drive. */
export interface LimitInput {
  /** Ascending, Hz. */
  readonly frequenciesHz: Float64Array;
  /** V rms of the sine at which levels and curves hold. */
  readonly driveV: number;
  /** Level of the sum at the set drive, dB re 20 µPa. */
  readonly levelsDb: Float64Array;
  readonly limited: readonly LimitedCurve[];
}

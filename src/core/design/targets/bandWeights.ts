/** How much the error counts within a band; where bands overlap the greatest weight holds. */
export interface WeightBand {
  readonly fromHz: number;
  readonly toHz: number;
  readonly weight: number;
}

/**
 * Weight of the squared error at each frequency, 0 outside all bands.
 * @example bandWeights([{ fromHz: 200, toHz: 10000, weight: 1 }], frequenciesHz)
 */
export const bandWeights = (bands: readonly WeightBand[], frequenciesHz: Float64Array): Float64Array =>
  frequenciesHz.map((f) =>
    bands.reduce((most, { fromHz, toHz, weight }) => (f >= fromHz && f <= toHz ? Math.max(most, weight) : most), 0),
  );

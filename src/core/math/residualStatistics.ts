export interface ResidualStatistics {
  readonly rms: number;
  readonly greatest: number;
  readonly greatestAt: number;
  /** Correlation of neighbours, −1 to 1; near 0 for noise. */
  readonly correlation: number;
  /** Correlation in its own standard deviations, 1/√n: above about 3 the model leaves something out. */
  readonly correlationScore: number;
}

/**
 * What is left of a fit: its size, its worst place, and whether neighbours go together, as they do where a model misses the data.
 *
 * Residuals in the order of their frequencies, two or more. The score assumes independent noise.
 * Source: common practice (lag-one autocorrelation; its deviation 1/√n from memory).
 * Example: alternating +1 and −1 have a correlation near −1.
 */
export function residualStatistics(residuals: ArrayLike<number>): ResidualStatistics {
  const n = residuals.length;
  let squares = 0;
  let products = 0;
  let greatestAt = 0;
  for (let i = 0; i < n; i++) {
    const r = residuals[i]!;
    squares += r * r;
    if (i > 0) products += r * residuals[i - 1]!;
    if (Math.abs(r) > Math.abs(residuals[greatestAt]!)) greatestAt = i;
  }
  const correlation = squares > 0 ? products / squares : 0;
  return {
    rms: Math.sqrt(squares / n),
    greatest: residuals[greatestAt]!,
    greatestAt,
    correlation,
    correlationScore: correlation * Math.sqrt(n),
  };
}

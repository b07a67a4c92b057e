/** Cells of this width hold one point each in the result. */
const CELLS_PER_OCTAVE = 48;

/**
 * Which points of a dense curve go together: runs of indices that share one cell of 1/48 octave. Sparse stretches keep
 * every point. `frequenciesHz` ascending, above 0.
 *
 * Example: 20 000 points on an even grid to 20 kHz come to fewer than 500 runs.
 */
export function denseRuns(frequenciesHz: ArrayLike<number>): readonly (readonly [from: number, to: number])[] {
  const runs: [number, number][] = [];
  let cell = Number.NaN;
  for (let i = 0; i < frequenciesHz.length; i++) {
    const own = Math.round(CELLS_PER_OCTAVE * Math.log2(frequenciesHz[i]!));
    if (own === cell) runs.at(-1)![1] = i + 1;
    else runs.push([i, i + 1]);
    cell = own;
  }
  return runs;
}

/** Mean of each run of a list. Means of ln f, ln|H| and phase keep the relation of magnitude and minimum phase. */
export const meansOfRuns = (
  values: ArrayLike<number>,
  runs: readonly (readonly [from: number, to: number])[],
): Float64Array =>
  Float64Array.from(runs, ([from, to]) => {
    let sum = 0;
    for (let i = from; i < to; i++) sum += values[i]!;
    return sum / (to - from);
  });

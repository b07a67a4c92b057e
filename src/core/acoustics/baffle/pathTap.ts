/** One detour: its length beyond the straight path and its share, as a factor of the free field to subtract. */
export interface PathTap {
  readonly extraM: number;
  readonly weight: number;
  /** The stretch of lengths for which it stands. */
  readonly spreadM: number;
}

/** Draws taps of nearly equal length together, in steps of `stepM`: sums of weights at their mean length. */
export const lumpTaps = (taps: readonly Omit<PathTap, 'spreadM'>[], stepM: number): PathTap[] => {
  const bins: { weight: number; size: number; moment: number }[] = [];
  for (const { extraM, weight } of taps) {
    const key = Math.floor(extraM / stepM);
    bins[key] ??= { weight: 0, size: 0, moment: 0 };
    const bin = bins[key];
    bin.weight += weight;
    bin.size += Math.abs(weight);
    bin.moment += Math.abs(weight) * extraM;
  }
  // filter also drops the holes
  return bins
    .filter((bin) => bin.size > 0)
    .map(({ weight, size, moment }) => ({ extraM: moment / size, weight, spreadM: stepM }));
};

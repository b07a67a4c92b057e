/** Many detours drawn together in steps of length: sums of weights at their mean length. */
export interface LumpedPaths {
  readonly stepM: number;
  /** By step of length; zero where no detour fell. */
  readonly weights: number[];
  readonly sizes: number[];
  readonly moments: number[];
  /** Sums over all: of |weight|, of |weight| times length, of |weight| times the stretch across a face. */
  size: number;
  moment: number;
  crossing: number;
}

export const lumpedPaths = (stepM: number): LumpedPaths => ({
  stepM,
  weights: [],
  sizes: [],
  moments: [],
  size: 0,
  moment: 0,
  crossing: 0,
});

export const addToLumps = (lumps: LumpedPaths, extraM: number, weight: number, acrossM: number): void => {
  const size = Math.abs(weight);
  const step = Math.floor(extraM / lumps.stepM);
  while (lumps.sizes.length <= step) {
    lumps.weights.push(0);
    lumps.sizes.push(0);
    lumps.moments.push(0);
  }
  lumps.weights[step] = lumps.weights[step]! + weight;
  lumps.sizes[step] = lumps.sizes[step]! + size;
  lumps.moments[step] = lumps.moments[step]! + size * extraM;
  lumps.size += size;
  lumps.moment += size * extraM;
  lumps.crossing += size * acrossM;
};

/** Detours as parallel lists: length beyond the straight path, factor of the free field to subtract, stretch of lengths covered. */
export interface PathTaps {
  readonly extraM: number[];
  readonly weights: number[];
  readonly spreadM: number[];
}

export const addTap = (taps: PathTaps, extraM: number, weight: number, spreadM: number): void => {
  taps.extraM.push(extraM);
  taps.weights.push(weight);
  taps.spreadM.push(spreadM);
};

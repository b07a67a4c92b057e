/** A loss stated as a quality factor at the frequency where it holds. */
export interface StatedLoss {
  readonly q: number;
  readonly atHz: number;
}

/** How values spread within a part's tolerance. */
export type Spread =
  /** Every value within the tolerance is as likely. */
  | { readonly kind: 'uniform' }
  /** A bell whose tolerance lies at so many standard deviations, cut off there: a maker's sorting. */
  | { readonly kind: 'normal'; readonly sigmas: number };

export interface PartTolerance {
  readonly partId: string;
  /** Greatest relative departure either way, 0.05 for ±5 %. */
  readonly tolerance: number;
  readonly spread: Spread;
  /** Left and right are sorted to lie within this of each other, relative; null: each is drawn for itself. */
  readonly matchedWithin: number | null;
}

/** What to build at random: pairs of loudspeakers from a seed. Parts that are not listed are exact. */
export interface ToleranceSpec {
  readonly parts: readonly PartTolerance[];
  readonly seed: number;
}

/** Half of what a thing covers of the baffle, across and up. */
export interface Footprint {
  readonly halfWidthM: number;
  readonly halfHeightM: number;
}

export interface BafflePlace {
  readonly xM: number;
  readonly yM: number;
}

/**
 * The nearest place where a thing of this size lies wholly on the baffle, on whole millimetres where that is possible.
 *
 * A thing that is larger than the baffle is centred across that direction.
 * @example keepOnBaffle({ xM: 0.2, yM: 0.9 }, { halfWidthM: 0.11, halfHeightM: 0.11 }, { widthM: 0.27, heightM: 0.94 })
 */
export function keepOnBaffle(
  place: BafflePlace,
  footprint: Footprint,
  baffle: { readonly widthM: number; readonly heightM: number },
): BafflePlace {
  return {
    xM: within(place.xM, -baffle.widthM / 2 + footprint.halfWidthM, baffle.widthM / 2 - footprint.halfWidthM),
    yM: within(place.yM, footprint.halfHeightM, baffle.heightM - footprint.halfHeightM),
  };
}

function within(value: number, least: number, greatest: number): number {
  if (least > greatest) return (least + greatest) / 2;
  const whole = Math.round(value * 1000) / 1000;
  return Math.min(greatest, Math.max(least, whole));
}

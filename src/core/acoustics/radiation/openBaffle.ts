/** A thin flat panel in the open, by its radius or by its sides, m. Places on it count from its centre, x right, y up. */
export type OpenBaffle =
  | { readonly kind: 'round'; readonly radiusM: number }
  | { readonly kind: 'rectangle'; readonly widthM: number; readonly heightM: number };

export interface BafflePlace {
  readonly xM: number;
  readonly yM: number;
}

/** Radius of the circle that has the panel's area, m. */
export const baffleRadiusM = (baffle: OpenBaffle): number =>
  baffle.kind === 'round' ? baffle.radiusM : Math.sqrt((baffle.widthM * baffle.heightM) / Math.PI);

/** Is the place on the panel? */
export const onBaffle = (baffle: OpenBaffle, { xM, yM }: BafflePlace): boolean =>
  baffle.kind === 'round'
    ? Math.hypot(xM, yM) <= baffle.radiusM
    : Math.abs(xM) <= baffle.widthM / 2 && Math.abs(yM) <= baffle.heightM / 2;

/** A driver is kept this far inside the panel's edge, m. */
const LEAST_EDGE_DISTANCE_M = 1e-3;

/** The place itself, or the nearest one on the panel a millimetre inside its edge. */
export const keptOnBaffle = (baffle: OpenBaffle, { xM, yM }: BafflePlace): BafflePlace => {
  if (baffle.kind === 'round') {
    const out = Math.hypot(xM, yM);
    const most = Math.max(baffle.radiusM - LEAST_EDGE_DISTANCE_M, 0);
    return out <= most ? { xM, yM } : { xM: (xM * most) / out, yM: (yM * most) / out };
  }
  const kept = (at: number, side: number): number => {
    const most = Math.max(side / 2 - LEAST_EDGE_DISTANCE_M, 0);
    return Math.min(Math.max(at, -most), most);
  };
  return { xM: kept(xM, baffle.widthM), yM: kept(yM, baffle.heightM) };
};

/** Distance from a place on the panel to its edge in the direction (cos, sin), m. */
export const edgeDistanceM = (baffle: OpenBaffle, { xM, yM }: BafflePlace, cosine: number, sine: number): number => {
  if (baffle.kind === 'round') {
    const along = xM * cosine + yM * sine;
    const across = xM * sine - yM * cosine;
    return Math.sqrt(Math.max(baffle.radiusM ** 2 - across ** 2, 0)) - along;
  }
  const toX = (baffle.widthM / 2 - Math.sign(cosine) * xM) / Math.abs(cosine);
  const toY = (baffle.heightM / 2 - Math.sign(sine) * yM) / Math.abs(sine);
  return Math.min(toX, toY);
};

/**
 * A rectangular panel that stands on a hard floor, as one twice as high in free air: the floor is a mirror.
 *
 * `heightOfSourceM` above the floor. The image driver is not in it: for its sound add the path from below the floor.
 *
 * Example: standingOnFloor({ kind: 'rectangle', widthM: 0.5, heightM: 0.9 }, { xM: 0, yM: 0.6 }).baffle.heightM = 1.8
 */
export const standingOnFloor = (
  panel: Extract<OpenBaffle, { kind: 'rectangle' }>,
  aboveFloor: BafflePlace,
): { readonly baffle: OpenBaffle; readonly source: BafflePlace } => ({
  baffle: { ...panel, heightM: 2 * panel.heightM },
  source: aboveFloor,
});

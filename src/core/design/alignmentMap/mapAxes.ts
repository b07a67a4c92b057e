import type { DriverNumbers } from '../alignments/driverNumbers.ts';

/** Volumes from Vas/30 to 4 Vas, tunings from fs/2.5 to 2.5 fs: the published boxes for QT from 0.2 to 0.6. */
const VOLUME_OVER_VAS = [1 / 30, 4] as const;
const TUNING_OVER_FS = [1 / 2.5, 2.5] as const;
/** Air left round the present box. */
const ROOM = 1.5;
/** The present box may lie anywhere; one that is absurdly far off does not take the whole map with it. */
const MOST_WIDENED = 20;

const spaced = (from: number, to: number, count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => from * (to / from) ** (i / (count - 1)));

/**
 * Axes of a map for a driver, both logarithmic, `count` steps each: round the published boxes, widened so that the present one lies inside.
 *
 * @example mapAxes({ fsHz: 33, qts: 0.37, vasM3: 0.057 }, { volumeM3: 0.04, tuningHz: 36 }, 60)
 */
export const mapAxes = (
  { fsHz, vasM3 }: Pick<DriverNumbers, 'fsHz' | 'vasM3'>,
  present: { readonly volumeM3: number; readonly tuningHz: number } | null,
  count: number,
): { readonly volumesM3: Float64Array; readonly tuningsHz: Float64Array } => {
  const axis = (unit: number, [low, high]: readonly [number, number], now: number | undefined): Float64Array => {
    const from = unit * low;
    const to = unit * high;
    const at =
      now !== undefined && now > 0 ? Math.min(Math.max(now, from / MOST_WIDENED), to * MOST_WIDENED) : from * ROOM;
    return spaced(Math.min(from, at / ROOM), Math.max(to, at * ROOM), count);
  };
  return {
    volumesM3: axis(vasM3, VOLUME_OVER_VAS, present?.volumeM3),
    tuningsHz: axis(fsHz, TUNING_OVER_FS, present?.tuningHz),
  };
};

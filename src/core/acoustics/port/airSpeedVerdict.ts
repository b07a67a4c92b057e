import { PORT_THRESHOLDS } from './portThresholds.ts';

export type AirSpeedConcern = 'quiet' | 'watch' | 'audible';

/** One measure of a port's air and what it says alone. */
export interface AirSpeedReason {
  readonly measure: 'speed' | 'mach' | 'stroke';
  readonly value: number;
  /** The threshold that it has passed, or the next one that it has not. */
  readonly threshold: number;
  readonly concern: AirSpeedConcern;
}

export interface AirSpeedVerdict {
  readonly concern: AirSpeedConcern;
  /** The measures, the one that decides first. */
  readonly reasons: readonly AirSpeedReason[];
}

const RANK: Readonly<Record<AirSpeedConcern, number>> = { quiet: 0, watch: 1, audible: 2 };

const judge = (
  measure: AirSpeedReason['measure'],
  value: number,
  caution: number,
  ceiling: number,
): AirSpeedReason => ({
  measure,
  value,
  threshold: value > caution ? (value > ceiling ? ceiling : caution) : caution,
  concern: value > ceiling ? 'audible' : value > caution ? 'watch' : 'quiet',
});

/**
 * How far a port's air is to be worried about at a peak speed (m/s) and frequency, and which measure says so.
 *
 * `edgeRadiusM`: the smaller rounding of its two ends, 0 for a sharp edge; a bore counts as flared when that is at least a quarter of
 * its radius `radiusM` (ours). Speed: 10 m/s watch and 5 % of the speed of sound audible for straight ends, 15 and 20 m/s for
 * flared ones. Stroke over the edge's radius: 0.5 watch, 1 audible, but never more than watch while the boundary layer is below
 * `layerGrowth` (there is too little energy in it; ours) and not judged at a sharp edge, where vortices shed at any stroke.
 * The worst measure decides. Guidance from practice, not a limit: show v, Mach and stroke beside it.
 * Sources: `PORT_THRESHOLDS`.
 *
 * Example: 15.6 m/s at 30 Hz in a sharp 80 mm tube: watch, by its speed
 */
export const airSpeedVerdict = (
  air: {
    readonly speedPeakMPerS: number;
    readonly mach: number;
    readonly strokePeakM: number;
    readonly layerReynolds: number;
  },
  port: { readonly radiusM: number; readonly edgeRadiusM: number },
): AirSpeedVerdict => {
  const limits = PORT_THRESHOLDS;
  const flared = port.edgeRadiusM >= FLARED_SHARE * port.radiusM;
  const speed = flared
    ? judge('speed', air.speedPeakMPerS, limits.flaredCautionMPerS.value, limits.flaredCeilingMPerS.value)
    : judge('speed', air.speedPeakMPerS, limits.straightCautionMPerS.value, Number.POSITIVE_INFINITY);
  const mach = flared ? [] : [judge('mach', air.mach, limits.machCeiling.value, limits.machCeiling.value)];
  const reasons = [speed, ...mach];
  if (port.edgeRadiusM > 0) {
    const stroke = judge(
      'stroke',
      air.strokePeakM / port.edgeRadiusM,
      limits.strokeCaution.value,
      limits.shedding.value,
    );
    const tame = stroke.concern === 'audible' && air.layerReynolds < limits.layerGrowth.value;
    reasons.push(tame ? { ...stroke, concern: 'watch' } : stroke);
  }
  const sorted = [...reasons].sort((a, b) => RANK[b.concern] - RANK[a.concern]);
  return { concern: sorted[0]!.concern, reasons: sorted };
};

const FLARED_SHARE = 0.25;

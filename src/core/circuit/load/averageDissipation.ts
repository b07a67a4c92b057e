/** A class B stage at a load: rails ±railV, load modulus in ohm, angle in rad (−π/2 to π/2). */
export interface ClassBStage {
  readonly railV: number;
  readonly absOhm: number;
  readonly angleRad: number;
}

/**
 * Mean power in the two output devices together of an ideal class B stage at a sine of peak `peakV` (0 to railV), W:
 * 2 Vcc Vp/(π|Z|) − Vp² cos φ/(2|Z|), supply less load.
 *
 * Source: textbook power balance, derived. Relative figure: rails sag, bias is left out.
 * @example averageDissipationW({ railV: 40, absOhm: 8, angleRad: 0 }, 25.46) // 40.5
 */
export const averageDissipationW = ({ railV, absOhm, angleRad }: ClassBStage, peakV: number): number =>
  (2 * railV * peakV) / (Math.PI * absOhm) - (peakV ** 2 * Math.cos(angleRad)) / (2 * absOhm);

/** Swing (peak, over the rail) at which that mean is greatest: 2/(π cos φ), at most 1. */
export const worstSwing = (angleRad: number): number =>
  Math.min(1, 2 / (Math.PI * Math.max(Math.cos(angleRad), 1e-12)));

/**
 * The greatest mean power in the devices over all swings, W.
 * @example worstAverageDissipationW({ railV: 40, absOhm: 8, angleRad: 0 }) // 40.5
 */
export const worstAverageDissipationW = (stage: ClassBStage): number =>
  averageDissipationW(stage, stage.railV * worstSwing(stage.angleRad));

/** How values of a plot compare: levels in dB, angles in degrees that come round, or sizes drawn from zero. */
export type Scale = 'level' | 'angle' | 'ratio';

/** Two curves no further apart than this lie on each other on the screen. */
const ALIKE_DB = 0.05;
/** The same as a share, and as the turn of a phasor by that share. */
const ALIKE_SHARE = 10 ** (ALIKE_DB / 20) - 1;
const ALIKE_DEG = (ALIKE_SHARE * 180) / Math.PI;

/**
 * Whether two curves over the same frequencies cannot be told apart from 20 Hz to 20 kHz: within 0.05 dB; for sizes that
 * share of the greatest of `b`. false for curves of unequal length.
 * @example coincide([100], [80], [80.04], 'level') // true
 */
export function coincide(
  frequenciesHz: ArrayLike<number>,
  a: ArrayLike<number>,
  b: ArrayLike<number>,
  scale: Scale,
): boolean {
  if (a.length !== b.length || a.length !== frequenciesHz.length) return false;
  let furthest = 0;
  let greatest = 0;
  for (let index = 0; index < a.length; index++) {
    const hz = frequenciesHz[index] ?? 0;
    if (hz < 20 || hz > 20000) continue;
    const [one, other] = [a[index] ?? Number.NaN, b[index] ?? Number.NaN];
    if (Number.isFinite(one) !== Number.isFinite(other)) return false;
    if (!Number.isFinite(one)) continue;
    const gap = one - other;
    furthest = Math.max(furthest, Math.abs(scale === 'angle' ? gap - 360 * Math.round(gap / 360) : gap));
    greatest = Math.max(greatest, Math.abs(other));
  }
  return furthest <= { level: ALIKE_DB, angle: ALIKE_DEG, ratio: ALIKE_SHARE * greatest }[scale];
}

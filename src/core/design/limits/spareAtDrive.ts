import { bandIndices } from '../band.ts';
import { driveShare } from './driveShare.ts';
import type { LimitedCurve, LimitInput } from './limitInput.ts';

/** How far one limit is at the set drive, at its worst frequency. */
export interface Spare {
  readonly curve: LimitedCurve;
  readonly atHz: number;
  /** In the unit of the limit. */
  readonly value: number;
  /** Share of the drive that would bring it to its limit: 1 at the limit, more beyond. */
  readonly share: number;
  /** What the drive may rise, dB; negative beyond the limit, null where the curve is at rest all through the band. */
  readonly spareDb: number | null;
}

/**
 * For the set drive how far each limit is, in the order of `limited`; empty where no point of the sweep lies in the band.
 * @example spareAtDrive(input, 20, 20000)[0].share
 */
export function spareAtDrive(input: LimitInput, fromHz: number, toHz: number): readonly Spare[] {
  const { from, to } = bandIndices(input.frequenciesHz, fromHz, toHz);
  if (from === to) return [];
  return input.limited.map((curve) => {
    let worst = from;
    for (let i = from + 1; i < to; i++) if (curve.values[i]! > curve.values[worst]!) worst = i;
    const share = driveShare(curve, worst);
    return {
      curve,
      atHz: input.frequenciesHz[worst]!,
      value: curve.values[worst]!,
      share,
      spareDb: share > 0 ? -20 * Math.log10(share) : null,
    };
  });
}

import { driveShare } from './driveShare.ts';
import type { LimitedCurve, LimitInput } from './limitInput.ts';

/** More than this above the set drive nothing is drawn: no amplifier reaches there, and the figure would say nothing. */
export const GREATEST_GAIN_DB = 60;

export interface GreatestLevel {
  /** dB re 20 µPa at the listening point; meaningless where nothing binds. */
  readonly levelsDb: Float64Array;
  /** What the drive may rise at this frequency, dB, negative where a limit is passed at the set drive; capped where nothing binds. */
  readonly gainsDb: Float64Array;
  /** The limit that ends it at each frequency; null where none does within `GREATEST_GAIN_DB` of the set drive. */
  readonly bindingBy: readonly (LimitedCurve | null)[];
}

/**
 * The greatest undistorted level of a sine at each frequency, and which limit of which element binds there.
 *
 * Exact for the linear loudspeaker: with every curve growing with the drive or its square, the allowed drive is the set one
 * over the largest share in use. At equal shares the first of `limited` counts. What real limits soften (suspension, port
 * compression, a hot coil's higher resistance) is left out; a level near a limit is already distorted in practice.
 * @example greatestLevel(limitsOf(model, simulation, driveV, statements)).levelsDb
 */
export function greatestLevel({ frequenciesHz, levelsDb, limited }: LimitInput): GreatestLevel {
  const count = frequenciesHz.length;
  const gainsDb = new Float64Array(count);
  const levels = new Float64Array(count);
  const bindingBy: (LimitedCurve | null)[] = [];
  const least = 10 ** (-GREATEST_GAIN_DB / 20);
  for (let i = 0; i < count; i++) {
    let worst = least;
    let binding: LimitedCurve | null = null;
    for (const curve of limited) {
      const share = driveShare(curve, i);
      if (share <= worst) continue;
      worst = share;
      binding = curve;
    }
    gainsDb[i] = -20 * Math.log10(worst);
    levels[i] = levelsDb[i]! + gainsDb[i]!;
    bindingBy.push(binding);
  }
  return { levelsDb: levels, gainsDb, bindingBy };
}

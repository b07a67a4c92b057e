import type { Row } from './build.ts';

/** An impedance as it was taken at the terminals of one channel. */
export interface TakenImpedance {
  /** Ascending, above 0. */
  readonly frequenciesHz: ArrayLike<number>;
  readonly magnitudesOhm: ArrayLike<number>;
  /** Null: taken without phase. */
  readonly phasesDeg: ArrayLike<number> | null;
  /** Spread of one reading as a share of it, and of its phase in radians alike; null: taken from the scatter of the curve itself. */
  readonly noiseShare: number | null;
}

/** What the search compares with: ln Z at each frequency, whose real parts alone count where no phase was taken. */
export interface ImpedanceData {
  readonly omegas: Float64Array;
  readonly logSizes: Float64Array;
  readonly phasesRad: Float64Array | null;
  readonly noise: number;
}

/** No more points than these are used, evenly picked: beyond them time grows and little is learnt. */
const MOST_POINTS = 256;
const RANGE_HZ = [5, 20_000] as const;
/** Beyond these a reading says open or short and no more, ohm. */
export const READABLE_OHM = [0.02, 2e4] as const;
const LEAST_NOISE = 1e-3;

/** Prepares a taken impedance; null where fewer than 12 points of it lie between 5 Hz and 20 kHz. */
export function impedanceData(taken: TakenImpedance): ImpedanceData | null {
  const { frequenciesHz, magnitudesOhm, phasesDeg } = taken;
  const usable: number[] = [];
  for (let i = 0; i < frequenciesHz.length; i++) {
    const hz = frequenciesHz[i]!;
    if (hz >= RANGE_HZ[0] && hz <= RANGE_HZ[1] && magnitudesOhm[i]! > 0 && Number.isFinite(magnitudesOhm[i]))
      usable.push(i);
  }
  if (usable.length < 12) return null;
  const logs = Float64Array.from(usable, (i) => Math.log(magnitudesOhm[i]!));
  const noise = Math.max(LEAST_NOISE, taken.noiseShare ?? scatterOf(logs));
  const picks = evenly(usable, MOST_POINTS);
  return {
    omegas: Float64Array.from(picks, (i) => 2 * Math.PI * frequenciesHz[i]!),
    logSizes: Float64Array.from(picks, (i) => Math.log(readable(magnitudesOhm[i]!))),
    phasesRad: phasesDeg === null ? null : Float64Array.from(picks, (i) => (phasesDeg[i]! * Math.PI) / 180),
    noise,
  };
}

/** The data at some of their places. */
export const atPlaces = (data: ImpedanceData, picks: readonly number[]): ImpedanceData => ({
  omegas: Float64Array.from(picks, (i) => data.omegas[i]!),
  logSizes: Float64Array.from(picks, (i) => data.logSizes[i]!),
  phasesRad: data.phasesRad && Float64Array.from(picks, (i) => data.phasesRad![i]!),
  noise: data.noise,
});

/** About `most` of the items, evenly spread over their order, ends included. */
export function evenly<T>(items: readonly T[], most: number): T[] {
  if (items.length <= most) return [...items];
  return Array.from({ length: most }, (_, k) => items[Math.round((k * (items.length - 1)) / (most - 1))]!);
}

/**
 * Writes what the data have over what a build gives, ln(Z taken / Z built), at one frequency into `out`: its size, then its angle
 * (0 without phase). False where the built impedance lies outside what gear reads: there only its size counts, and no slope.
 */
export function missInto(out: Float64Array, data: ImpedanceData, { re, im }: Row, f: number): boolean {
  const size = Math.hypot(re[f]!, im[f]!);
  const isReadable = size > READABLE_OHM[0] && size < READABLE_OHM[1];
  out[0] = data.logSizes[f]! - Math.log(isReadable ? size : readable(size));
  out[1] = 0;
  if (data.phasesRad !== null && isReadable && isLogReadable(data.logSizes[f]!)) {
    const turn = data.phasesRad[f]! - Math.atan2(im[f]!, re[f]!);
    out[1] = turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
  }
  return isReadable;
}

const readable = (ohm: number): number => Math.min(READABLE_OHM[1], Math.max(READABLE_OHM[0], ohm));
const isLogReadable = (log: number): boolean => log > Math.log(READABLE_OHM[0]) && log < Math.log(READABLE_OHM[1]);

/** Spread of single readings: the median of second differences, in which a smooth curve leaves little, over that of normal noise. */
function scatterOf(logs: Float64Array): number {
  const sizes = Array.from({ length: logs.length - 2 }, (_, i) => Math.abs(logs[i]! - 2 * logs[i + 1]! + logs[i + 2]!));
  sizes.sort((a, b) => a - b);
  const MEDIAN_OF_NORMAL = 0.6745;
  return sizes[sizes.length >> 1]! / MEDIAN_OF_NORMAL / Math.sqrt(6);
}

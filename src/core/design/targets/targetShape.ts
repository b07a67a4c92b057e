import {
  angularFrequency,
  type FilterShape,
  highPassTransfer,
  lowPassTransfer,
  respond,
} from '../../circuit/synthesis/index.ts';

/** One end of a band: a slope of the trade's families with its corner. */
export interface Flank {
  readonly shape: FilterShape;
  readonly cornerHz: number;
}

/** What a curve should be: flat or tilted between two flanks. Electrical or acoustic is a matter of the curve it is set for. */
export interface TargetShape {
  /** Level in the pass band, in the curve's own dB; null: whatever comes out, the form alone counts. */
  readonly levelDb: number | null;
  /** Positive: up towards high frequencies; the tilt leaves the level at `pivotHz`. */
  readonly tiltDbPerOctave: number;
  readonly pivotHz: number;
  readonly highPass: Flank | null;
  readonly lowPass: Flank | null;
}

/** A level lower than this below the pass band is not asked of anything. */
const LOWEST_DB = -200;

/**
 * Levels of a shape, dB; a free level counts as 0 dB. Flanks: 3.01 dB down at the corner for Butterworth, 6.02 dB for
 * Linkwitz-Riley, Bessel as its normalisation says. Throws for an order that a family does not have.
 * Source of the families: see `prototypePolynomial`.
 * @example targetLevelsDb({ levelDb: 86, tiltDbPerOctave: 0, pivotHz: 1000, highPass: null, lowPass }, frequenciesHz)
 */
export function targetLevelsDb(shape: TargetShape, frequenciesHz: Float64Array): Float64Array {
  const { levelDb, tiltDbPerOctave, pivotHz, highPass, lowPass } = shape;
  const flanks = [
    ...(highPass === null ? [] : [highPassTransfer(highPass.shape, highPass.cornerHz)]),
    ...(lowPass === null ? [] : [lowPassTransfer(lowPass.shape, lowPass.cornerHz)]),
  ];
  return frequenciesHz.map((f) => {
    let db = (levelDb ?? 0) + tiltDbPerOctave * Math.log2(f / pivotHz);
    for (const flank of flanks) {
      const { re, im } = respond(flank, angularFrequency(f));
      db += Math.max(LOWEST_DB, 10 * Math.log10(re * re + im * im));
    }
    return db;
  });
}

import { bounds, boxEdges, type CabinetBox, FRONT, type Position, type Triple } from './boxEdges.ts';
import { firstOrderTaps } from './firstOrderTaps.ts';
import { lumpTaps, type PathTap } from './pathTap.ts';
import { type SecondOrderTap, secondOrderTaps } from './secondOrderTaps.ts';

/** Detours over the cabinet's edges: extra lengths beyond the straight path, with weights that add to 1. */
export interface EdgePaths {
  readonly extraM: Float64Array;
  readonly weights: Float64Array;
  /** 1 in front of the baffle's plane, 0 behind it. */
  readonly direct: 0 | 1;
  /** The stretch of lengths for which each path stands; a path fades out where the stretch spans many wavelengths. Absent: 0. */
  readonly spreadM?: Float64Array;
}

/** A source is kept this far inside the front's edges. */
const LEAST_EDGE_DISTANCE_M = 1e-3;
const LUMP_SHARE_OF_PERIMETER = 0.03;

const inside = (x: number, from: number, to: number): number =>
  Math.min(Math.max(x, from + LEAST_EDGE_DISTANCE_M), to - LEAST_EDGE_DISTANCE_M);

/**
 * The detours by which a source on the front reaches a listener over the cabinet's edges: about 60 lengths with weights.
 *
 * Lengths in metres, in the cabinet's frame (origin bottom centre of the front, z towards the listener); source on the front.
 * For a source on the back give the listener's distance outwards from the back as zM: the box is symmetrical. Straight, sharp edges; no floor.
 *
 * One and two edges are taken from wedge theory with all faces of the box; what is missing from a sum of 1 (three edges and
 * more) is one further path, longer than the mean second one by one crossing. So the level at low frequencies is that of full
 * space exactly; a real cabinet is up to 0.6 dB off that at 2 to 3 m, louder in front. Used by `baffleFactorInto`.
 *
 * Error there, against an edge-source solution to order 8 (four cabinets 0.2 × 0.3 to 0.32 × 1.0 m, 50 Hz to 5 kHz, 2 to 3 m):
 * rms 0.3 dB and at most 1.1 dB within 30 degrees, 0.4 and 1.3 dB at 45 to 75 degrees, 1.2 dB rms at 105 to 120 degrees, 2 dB rms
 * at 150 to 170 degrees (single notches more). Against boundary elements on one box: see the test.
 * Sources: `wedgeKernel`, `secondOrderTaps`.
 *
 * Example: edgePaths({ widthM: 0.2, heightM: 0.3, depthM: 0.2 }, { xM: 0, yM: 0.18 }, { xM: 0, yM: 0.18, zM: 2 }).direct = 1
 */
export const edgePaths = (
  box: CabinetBox,
  source: { readonly xM: number; readonly yM: number },
  listener: Position,
): EdgePaths => {
  const from: Triple = [inside(source.xM, -box.widthM / 2, box.widthM / 2), inside(source.yM, 0, box.heightM), 0];
  const to: Triple = [listener.xM, listener.yM, listener.zM];
  const edges = boxEdges(box);
  const taps: PathTap[] = [];
  const second: SecondOrderTap[] = [];
  for (const edge of edges) {
    if (!bounds(edge, FRONT)) continue;
    taps.push(...firstOrderTaps(edge, from, to));
    second.push(...secondOrderTaps(edges, edge, from, to));
  }
  const lumpM = LUMP_SHARE_OF_PERIMETER * (box.widthM + box.heightM) * 2;
  taps.push(...lumpTaps(second, lumpM));
  const direct = listener.zM >= 0 ? 1 : 0;
  // In front the edge waves are subtracted from the doubled direct sound, behind they are all there is.
  const sense = direct === 1 ? 1 : -1;
  let sum = 0;
  for (const tap of taps) sum += tap.weight;
  taps.push({ extraM: furtherM(second), weight: sense - sum, spreadM: lumpM });
  return {
    extraM: Float64Array.from(taps, (tap) => tap.extraM),
    weights: Float64Array.from(taps, (tap) => tap.weight * sense),
    direct,
    spreadM: Float64Array.from(taps, (tap) => tap.spreadM),
  };
};

/** Mean length of the second-order detours plus their mean crossing: where the third and later orders lie together. */
const furtherM = (taps: readonly SecondOrderTap[]): number => {
  let size = 0;
  let sum = 0;
  for (const tap of taps) {
    size += Math.abs(tap.weight);
    sum += Math.abs(tap.weight) * (tap.extraM + tap.acrossM);
  }
  return sum / size;
};

import { phasorsInto } from '../../math/phasors.ts';
import type { EdgePaths } from './edgePaths.ts';

/** Largest phase step, rad, over which a cubic interpolates exp(jφ): its error is then below 6e-4. */
const STEP_RAD = 0.4;
/** A path that stands for a stretch of lengths fades between these phases, rad, across the stretch: there it averages out. */
const FADE_FROM_RAD = 2.5;
const FADE_TO_RAD = 5;

interface Tap {
  readonly extraM: number;
  readonly weight: number;
  readonly spreadM: number;
}

const fadeAt = (k: number, spreadM: number): number =>
  Math.min(Math.max((FADE_TO_RAD - k * spreadM) / (FADE_TO_RAD - FADE_FROM_RAD), 0), 1);

const addDirectly = (
  re: Float64Array,
  im: Float64Array,
  taps: readonly Tap[],
  omegas: Float64Array,
  slownessSPerM: number,
): void => {
  for (let i = 0; i < omegas.length; i++) {
    const k = omegas[i]! * slownessSPerM;
    for (const tap of taps) {
      const weight = tap.weight * fadeAt(k, tap.spreadM);
      re[i] = re[i]! + weight * Math.cos(k * tap.extraM);
      im[i] = im[i]! - weight * Math.sin(k * tap.extraM);
    }
  }
};

/** One path on an even grid of k, which starts one step below 0: a cubic needs a point on either side. */
const addToGrid = (gridRe: Float64Array, gridIm: Float64Array, tap: Tap, middleM: number, step: number): void => {
  const angle = -step * (tap.extraM - middleM);
  const turnRe = Math.cos(angle);
  const turnIm = Math.sin(angle);
  const { spreadM } = tap;
  const full = spreadM === 0 ? gridRe.length : Math.min(gridRe.length, Math.floor(FADE_FROM_RAD / spreadM / step) + 1);
  const end = spreadM === 0 ? gridRe.length : Math.min(gridRe.length, Math.floor(FADE_TO_RAD / spreadM / step) + 2);
  let re = tap.weight * turnRe;
  let im = -tap.weight * turnIm;
  for (let i = 0; i < full; i++) {
    gridRe[i] = gridRe[i]! + re;
    gridIm[i] = gridIm[i]! + im;
    const next = re * turnRe - im * turnIm;
    im = re * turnIm + im * turnRe;
    re = next;
  }
  for (let i = full; i < end; i++) {
    const fade = fadeAt((i - 1) * step, spreadM);
    gridRe[i] = gridRe[i]! + fade * re;
    gridIm[i] = gridIm[i]! + fade * im;
    const next = re * turnRe - im * turnIm;
    im = re * turnIm + im * turnRe;
    re = next;
  }
};

const addByGrid = (
  outRe: Float64Array,
  outIm: Float64Array,
  taps: readonly Tap[],
  omegas: Float64Array,
  slownessSPerM: number,
  highest: number,
): void => {
  let nearest = Number.POSITIVE_INFINITY;
  let furthest = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const { extraM, spreadM } of taps) {
    nearest = Math.min(nearest, extraM);
    furthest = Math.max(furthest, extraM);
    least = Math.min(least, spreadM);
  }
  // Phases count from the middle length, so that the grid may be as coarse as can be.
  const middle = (nearest + furthest) / 2;
  const step = STEP_RAD / Math.max((furthest - nearest) / 2, 1e-3);
  const last = Math.min(highest, FADE_TO_RAD / least);
  const size = Math.ceil(last / step) + 4;
  if (size > 3 * omegas.length) {
    addDirectly(outRe, outIm, taps, omegas, slownessSPerM);
    return;
  }
  const gridRe = new Float64Array(size);
  const gridIm = new Float64Array(size);
  const turnRe = new Float64Array(omegas.length);
  const turnIm = new Float64Array(omegas.length);
  phasorsInto(turnRe, turnIm, omegas, -slownessSPerM * middle);
  for (const tap of taps) addToGrid(gridRe, gridIm, tap, middle, step);
  for (let i = 0; i < omegas.length; i++) {
    const k = omegas[i]! * slownessSPerM;
    if (k > last) continue;
    const place = k / step;
    const at = Math.floor(place);
    const t = place - at;
    const w0 = (-t * (t - 1) * (t - 2)) / 6;
    const w1 = ((t + 1) * (t - 1) * (t - 2)) / 2;
    const w2 = (-(t + 1) * t * (t - 2)) / 2;
    const w3 = ((t + 1) * t * (t - 1)) / 6;
    const re = w0 * gridRe[at]! + w1 * gridRe[at + 1]! + w2 * gridRe[at + 2]! + w3 * gridRe[at + 3]!;
    const im = w0 * gridIm[at]! + w1 * gridIm[at + 1]! + w2 * gridIm[at + 2]! + w3 * gridIm[at + 3]!;
    outRe[i] = outRe[i]! + re * turnRe[i]! - im * turnIm[i]!;
    outIm[i] = outIm[i]! + im * turnRe[i]! + re * turnIm[i]!;
  }
};

/**
 * Σ w exp(−jk·extra) over a sweep, k = ω · slowness, written into the caller's buffers (as long as `omegas`, rad/s, all >= 0).
 *
 * A long sweep is summed on an even grid of k, where every path is a constant rotation, and interpolated by cubics; paths of
 * small and of large spread apart, since the latter end early. Error below 1e-3 of Σ|w|; short sweeps are summed term by term.
 */
export const edgeSumInto = (
  outRe: Float64Array,
  outIm: Float64Array,
  paths: EdgePaths,
  omegas: Float64Array,
  slownessSPerM: number,
): void => {
  outRe.fill(0);
  outIm.fill(0);
  let highest = 0;
  for (let i = 0; i < omegas.length; i++) highest = Math.max(highest, omegas[i]! * slownessSPerM);
  const early: Tap[] = [];
  const late: Tap[] = [];
  for (let n = 0; n < paths.extraM.length; n++) {
    const spreadM = paths.spreadM?.[n] ?? 0;
    const tap = { extraM: paths.extraM[n]!, weight: paths.weights[n]!, spreadM };
    (highest * spreadM > EARLY_END_RAD ? late : early).push(tap);
  }
  if (early.length > 0) addByGrid(outRe, outIm, early, omegas, slownessSPerM, highest);
  if (late.length > 0) addByGrid(outRe, outIm, late, omegas, slownessSPerM, highest);
};

const EARLY_END_RAD = 4 * FADE_TO_RAD;

import { phasorsInto } from '../../math/phasors.ts';
import { scratchBuffers } from '../../math/scratchBuffers.ts';
import type { EdgePaths } from './edgePaths.ts';

/** Largest phase step, rad, over which a cubic interpolates exp(jφ): its error is then below 6e-4. */
const STEP_RAD = 0.4;
/** A path that stands for a stretch of lengths fades between these phases, rad, across the stretch: there it averages out. */
const FADE_FROM_RAD = 2.5;
const FADE_TO_RAD = 5;
/** Paths that fade out in the first quarter of the sweep are summed apart. */
const EARLY_END_RAD = 4 * FADE_TO_RAD;

const scratch = scratchBuffers();

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
  middleM: number,
  omegas: Float64Array,
  slownessSPerM: number,
): void => {
  for (let i = 0; i < omegas.length; i++) {
    const k = omegas[i]! * slownessSPerM;
    for (const tap of taps) {
      const weight = tap.weight * fadeAt(k, tap.spreadM);
      const angle = k * (tap.extraM - middleM);
      re[i] = re[i]! + weight * Math.cos(angle);
      im[i] = im[i]! - weight * Math.sin(angle);
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
  // Linear, as fadeAt; one step per sample.
  const fall = (step * spreadM) / (FADE_TO_RAD - FADE_FROM_RAD);
  let fade = fadeAt((full - 1) * step, spreadM);
  for (let i = full; i < end && fade > 0; i++) {
    gridRe[i] = gridRe[i]! + fade * re;
    gridIm[i] = gridIm[i]! + fade * im;
    fade -= fall;
    const next = re * turnRe - im * turnIm;
    im = re * turnIm + im * turnRe;
    re = next;
  }
};

const addByGrid = (
  outRe: Float64Array,
  outIm: Float64Array,
  taps: readonly Tap[],
  middleM: number,
  omegas: Float64Array,
  slownessSPerM: number,
): void => {
  let reachM = 1e-3;
  let leastSpreadM = Number.POSITIVE_INFINITY;
  for (const { extraM, spreadM } of taps) {
    reachM = Math.max(reachM, Math.abs(extraM - middleM));
    leastSpreadM = Math.min(leastSpreadM, spreadM);
  }
  const step = STEP_RAD / reachM;
  const last = Math.min(highestOf(omegas) * slownessSPerM, FADE_TO_RAD / leastSpreadM);
  const size = Math.ceil(last / step) + 4;
  if (size > 3 * omegas.length) {
    addDirectly(outRe, outIm, taps, middleM, omegas, slownessSPerM);
    return;
  }
  const gridRe = scratch.take(size).fill(0);
  const gridIm = scratch.take(size).fill(0);
  for (const tap of taps) addToGrid(gridRe, gridIm, tap, middleM, step);
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
    outRe[i] = outRe[i]! + w0 * gridRe[at]! + w1 * gridRe[at + 1]! + w2 * gridRe[at + 2]! + w3 * gridRe[at + 3]!;
    outIm[i] = outIm[i]! + w0 * gridIm[at]! + w1 * gridIm[at + 1]! + w2 * gridIm[at + 2]! + w3 * gridIm[at + 3]!;
  }
};

const highestOf = (values: Float64Array): number => {
  let highest = 0;
  for (let i = 0; i < values.length; i++) if (values[i]! > highest) highest = values[i]!;
  return highest;
};

/**
 * Σ w exp(−jk·extra) over a sweep, k = ω · slowness, written into the caller's buffers (as long as `omegas`, rad/s, all >= 0).
 *
 * A long sweep is summed on an even grid of k, where every path is a constant rotation, and interpolated by cubics; paths of
 * small and of large spread apart, since the latter end early. Phases count from a middle length, so that the grid may be coarse.
 * Error below 2e-3 of Σ|w|; short sweeps are summed term by term.
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
  const highest = highestOf(omegas) * slownessSPerM;
  const early: Tap[] = [];
  const late: Tap[] = [];
  let nearestM = Number.POSITIVE_INFINITY;
  let furthestM = 0;
  for (let n = 0; n < paths.extraM.length; n++) {
    const spreadM = paths.spreadM?.[n] ?? 0;
    const tap = { extraM: paths.extraM[n]!, weight: paths.weights[n]!, spreadM };
    if (highest * spreadM > EARLY_END_RAD) {
      late.push(tap);
      continue;
    }
    early.push(tap);
    nearestM = Math.min(nearestM, tap.extraM);
    furthestM = Math.max(furthestM, tap.extraM);
  }
  const middleM = early.length === 0 ? 0 : (nearestM + furthestM) / 2;
  if (early.length > 0) addByGrid(outRe, outIm, early, middleM, omegas, slownessSPerM);
  if (late.length > 0) addByGrid(outRe, outIm, late, middleM, omegas, slownessSPerM);
  const turnRe = scratch.take(omegas.length);
  const turnIm = scratch.take(omegas.length);
  phasorsInto(turnRe, turnIm, omegas, -slownessSPerM * middleM);
  for (let i = 0; i < omegas.length; i++) {
    const re = outRe[i]!;
    outRe[i] = re * turnRe[i]! - outIm[i]! * turnIm[i]!;
    outIm[i] = re * turnIm[i]! + outIm[i]! * turnRe[i]!;
  }
  scratch.release();
};

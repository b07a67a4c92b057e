import { type Result, succeed } from '../../messages/problem.ts';
import { cornersOf, dot, type HalfSpace, type Vector } from '../solid/index.ts';
import { AXES } from './braceSolid.ts';
import type { Axis, Cabinet } from './cabinet.ts';
import { unitOf } from './chamberSpaces.ts';
import { readCabinet } from './readCabinet.ts';

export interface StandingWave {
  readonly axis: Axis;
  /** Between the two inner faces, through the middle of the chamber. */
  readonly distanceM: number;
  /** Faces that are not parallel spread the wave; the figures are then those of the middle. */
  readonly parallel: boolean;
  /** n c / (2 d) for n = 1, 2, … */
  readonly frequenciesHz: readonly number[];
}
export interface RatioWarning {
  readonly axes: readonly [Axis, Axis];
  /** The longer over the shorter, and the whole number that it is within `withinShare` of. */
  readonly ratio: number;
  readonly whole: number;
}
export interface ChamberWaves {
  readonly chamberId: string;
  readonly waves: readonly StandingWave[];
  readonly warnings: readonly RatioWarning[];
}

/** How near a whole number a ratio of sizes may come before their waves fall together. Common practice, no source. */
export const WHOLE_RATIO_SHARE = 0.05;

function waveOn(axis: Axis, space: readonly HalfSpace[], count: number, soundSpeedMPerS: number): StandingWave {
  const unit = unitOf(axis);
  const corners = cornersOf(space);
  const middle = unit.map((_, i) => {
    const places = corners.map((corner) => corner[i]!);
    return (Math.max(...places) + Math.min(...places)) / 2;
  }) as unknown as Vector;
  // A needle through the middle: how far it goes until a face stops it.
  const reach = (sign: 1 | -1): { m: number; square: boolean } =>
    space.reduce<{ m: number; square: boolean }>(
      (least, { normal, offsetM }) => {
        const slope = sign * dot(normal, unit);
        if (slope <= 1e-12) return least;
        const m = (offsetM - dot(normal, middle)) / slope;
        return m < least.m ? { m, square: slope > 1 - 1e-9 } : least;
      },
      { m: Number.POSITIVE_INFINITY, square: true },
    );
  const [ahead, behind] = [reach(1), reach(-1)];
  const distanceM = ahead.m + behind.m;
  return {
    axis,
    distanceM,
    parallel: ahead.square && behind.square,
    frequenciesHz: Array.from({ length: count }, (_, n) => ((n + 1) * soundSpeedMPerS) / (2 * distanceM)),
  };
}

const warningsOf = (waves: readonly StandingWave[]): RatioWarning[] =>
  waves.flatMap((a, i) =>
    waves.slice(i + 1).flatMap((b): RatioWarning[] => {
      if (!a.parallel || !b.parallel) return [];
      const ratio = Math.max(a.distanceM, b.distanceM) / Math.min(a.distanceM, b.distanceM);
      const whole = Math.round(ratio);
      return Math.abs(ratio / whole - 1) < WHOLE_RATIO_SHARE ? [{ axes: [a.axis, b.axis], ratio, whole }] : [];
    }),
  );

/**
 * Standing waves between facing inner walls of each chamber: f = n c / (2 d), n = 1 … `count`, c in m/s; and pairs of sizes whose waves
 * fall together. Holds for an empty chamber with rigid walls; braces and filling shift and damp it. Source: axial modes of a rigid
 * room, e.g. P. M. Morse, Vibration and Sound, 1948, section 32 (from memory). Returns what `panelsOf` does.
 *
 * Example: 0.343 m apart with c = 343 m/s: 500, 1000, 1500 Hz.
 */
export function standingWaves(
  cabinet: Cabinet,
  count: number,
  soundSpeedMPerS: number,
): Result<readonly ChamberWaves[]> {
  const read = readCabinet(cabinet);
  if (!read.ok) return read;
  return succeed(
    [...read.value.spaces.chambers].map(([chamberId, space]) => {
      const waves = AXES.map((axis) => waveOn(axis, space, count, soundSpeedMPerS));
      return { chamberId, waves, warnings: warningsOf(waves) };
    }),
  );
}

import { baffleFactorInto, dipoleFactorInto, pistonDirectivitiesInto } from '../acoustics/index.ts';
import { phasorsInto } from '../math/index.ts';
import { complexCurve } from './complexCurve.ts';
import type { Radiation, SpeakerModel } from './model.ts';
import type { ComplexCurve } from './simulation.ts';

/**
 * How a source's pressure at the listening point differs from a point source into half space: the piston's directivity,
 * and the baffle step at its place in the `baffle-step` view or one half (full space). A cone on an open baffle has its back's sound in
 * it in every view.
 */
export function directivityFactorInto(
  out: ComplexCurve,
  radiation: Radiation,
  model: Pick<SpeakerModel, 'air' | 'radiation'>,
  omegas: Float64Array,
): void {
  const c = model.air.soundSpeedMPerS;
  if (radiation.dipole !== undefined) {
    dipoleFactorInto(out, radiation.dipole, radiation, omegas, c);
    return;
  }
  if (model.radiation === 'baffle-step' && radiation.edges !== null) {
    baffleFactorInto(out, radiation.edges, radiation, omegas, c);
    return;
  }
  pistonDirectivityInto(out, radiation, omegas, c);
  if (model.radiation !== 'full-space') return;
  for (let i = 0; i < omegas.length; i++) out.re[i] = 0.5 * out.re[i]!;
}

/** Directivity of the equivalent flat piston in an infinite baffle at the path's angle, real. */
export function pistonDirectivityInto(
  out: ComplexCurve,
  radiation: Radiation,
  omegas: Float64Array,
  soundSpeedMPerS: number,
): void {
  const sine = Math.sin((radiation.offAxisDeg * Math.PI) / 180);
  out.im.fill(0);
  pistonDirectivitiesInto(out.re, omegas, (radiation.pistonRadiusM * sine) / soundSpeedMPerS);
}

/**
 * Pressure of a volume velocity U at the listening point, Pa rms: p = jωρU e^(-jkr)/(2πr) times `directivityFactorInto`.
 * Source: L. L. Beranek, Acoustics, 1954, section 4.3, simple source, twice for half space (from memory).
 */
export function radiateInto(
  out: ComplexCurve,
  volumeVelocity: ComplexCurve,
  radiation: Radiation,
  model: Pick<SpeakerModel, 'air' | 'radiation'>,
  omegas: Float64Array,
): void {
  directivityFactorInto(out, radiation, model, omegas);
  const { densityKgPerM3, soundSpeedMPerS } = model.air;
  const perOmega = densityKgPerM3 / (2 * Math.PI * radiation.distanceM);
  const travel = complexCurve(omegas.length);
  phasorsInto(travel.re, travel.im, omegas, -radiation.distanceM / soundSpeedMPerS);
  for (let i = 0; i < omegas.length; i++) {
    const size = perOmega * omegas[i]!;
    const ur = volumeVelocity.re[i]!;
    const ui = volumeVelocity.im[i]!;
    const cosine = travel.re[i]!;
    const sine = travel.im[i]!;
    // j U e^(-jkr)
    const re = -size * (ur * sine + ui * cosine);
    const im = size * (ur * cosine - ui * sine);
    const fr = out.re[i]!;
    const fi = out.im[i]!;
    out.re[i] = re * fr - im * fi;
    out.im[i] = re * fi + im * fr;
  }
}

import {
  DISC_EDGE_PEAK_KA,
  discEdgeWave,
  floorBounce,
  kaOf,
  type PointSource,
  pointSourceSum,
  sphereHalfStepHzM,
  sphereHalfStepKa,
  spherePointSource,
  TEXTBOOK_AIR,
  wavenumberPerM,
} from '../../../src/core/acoustics/index.ts';
import type { Adapter } from '../adapter.ts';
import { angleDeg, asNumber, asNumbers, dbOfAmplitude, magnitude, radFromDeg, scaled } from '../convert.ts';

const asPosition = (triple: unknown) => {
  const [x, y, z] = asNumbers(triple);
  return { xM: asNumber(x), yM: asNumber(y), zM: asNumber(z) };
};
const asList = (list: unknown): readonly unknown[] => {
  if (!Array.isArray(list)) throw new TypeError('expected a list');
  return list;
};
const asSource = (pair: unknown): PointSource => {
  const [position, amplitude] = asList(pair);
  return { at: asPosition(position), amplitude: asNumber(amplitude) };
};

const spherePoint: Adapter = {
  family: 'sphere-point',
  requires: ['ka', 'theta_deg'],
  run: ({ ka, theta_deg }) => ({
    dB: asNumbers(ka).map((size) =>
      asNumbers(theta_deg).map((deg) => dbOfAmplitude(magnitude(spherePointSource(size, radFromDeg(deg))))),
    ),
  }),
};

const baffleStep: Adapter = {
  family: 'baffle-step',
  requires: ['sphere'],
  run: () => ({
    ka: sphereHalfStepKa(),
    f_times_diameter_c343p2: sphereHalfStepHzM(TEXTBOOK_AIR.soundSpeedMPerS),
  }),
};

const discEdge: Adapter = {
  family: 'disc-edge',
  requires: ['f_times_a_over_c'],
  run: ({ f_times_a_over_c }) => ({
    dB_re_free_field: asNumbers(f_times_a_over_c).map((f) => dbOfAmplitude(magnitude(discEdgeWave(kaOf(1, f, 1))))),
    peak_dB: dbOfAmplitude(magnitude(discEdgeWave(DISC_EDGE_PEAK_KA))),
    peak_ka: DISC_EDGE_PEAK_KA,
  }),
};

const field: Adapter = {
  family: 'field',
  requires: ['sources_xyz_m_amplitude', 'observer_m', 'f_Hz', 'c'],
  run: ({ sources_xyz_m_amplitude, observer_m, f_Hz, c }) => {
    const sources = asList(sources_xyz_m_amplitude).map(asSource);
    const observer = asPosition(observer_m);
    const sums = asNumbers(f_Hz).map((f) => pointSourceSum(sources, observer, wavenumberPerM(f, asNumber(c))));
    return {
      magnitude: sums.map(magnitude),
      level_dB: sums.map((p) => dbOfAmplitude(magnitude(p))),
      phase_deg: sums.map(angleDeg),
    };
  },
};

const floor: Adapter = {
  family: 'floor',
  requires: ['source_height_m', 'listener_height_m', 'distance_m', 'c'],
  run: ({ source_height_m, listener_height_m, distance_m, c }) => {
    const heights = [asNumber(source_height_m), asNumber(listener_height_m)] as const;
    const bounce = floorBounce(heights[0], heights[1], asNumber(distance_m), asNumber(c));
    return {
      path_difference_m: bounce.pathDifferenceM,
      first_null_Hz: bounce.firstNullHz,
      null_depth_dB: dbOfAmplitude(bounce.nullRatio),
      delay_ms: scaled(bounce.delayS, 3),
    };
  },
};

export const adapters: readonly Adapter[] = [spherePoint, baffleStep, discEdge, field, floor];

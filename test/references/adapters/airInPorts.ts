import {
  circleAreaM2,
  FLANGED_END_RADII,
  FREE_END_RADII_PRINTED,
  helmholtzHz,
  JET_THIRD_HARMONIC,
  jetResistancePaSPerM,
  jetResistancePaSPerM3,
  meanInverseDistancePerM,
  mutualMassKgPerM4,
  neckLengthM,
  neighbourExtensionM,
  PISTON_END_RADII,
  portAirSpeedMPerS,
  portFlow,
  roundOfRadius,
  speedForLayerReynolds,
  volumeVelocityForPressure,
} from '../../../src/core/acoustics/index.ts';
import type { Adapter, Inputs } from '../adapter.ts';
import { asNumber, asNumbers, paOfDbSpl, peakFromRms } from '../convert.ts';

const AIR_KEYS = ['rho_kg_m3', 'c_m_s', 'gamma', 'Pr', 'mu_Pa_s'];
const airOf = (inputs: Inputs) => ({
  densityKgPerM3: asNumber(inputs.rho_kg_m3),
  soundSpeedMPerS: asNumber(inputs.c_m_s),
  viscosityPaS: asNumber(inputs.mu_Pa_s),
});

/** The keys name the ends: the printed free end, a pipe in a flange, a piston in a baffle. */
const ENDS: Readonly<Record<string, readonly number[]>> = {
  f_no_corr_Hz: [],
  f_unfl_unfl_Hz: [FREE_END_RADII_PRINTED, FREE_END_RADII_PRINTED],
  f_flange_unfl_Hz: [FLANGED_END_RADII, FREE_END_RADII_PRINTED],
  f_flange_flange_Hz: [FLANGED_END_RADII, FLANGED_END_RADII],
  f_piston_piston_Hz: [PISTON_END_RADII, PISTON_END_RADII],
};

const ends: Adapter = {
  family: 'ports',
  requires: ['radius_m', 'length_m', 'V_m3', 'c_m_s'],
  allows: AIR_KEYS,
  run: (inputs) => {
    const areaM2 = circleAreaM2(asNumber(inputs.radius_m));
    const volumeM3 = asNumber(inputs.V_m3);
    const tuning = (endRadii: readonly number[]): number =>
      helmholtzHz(
        { areaM2, volumeM3, effectiveLengthM: neckLengthM(areaM2, asNumber(inputs.length_m), endRadii) },
        asNumber(inputs.c_m_s),
      );
    return Object.fromEntries(Object.entries(ENDS).map(([key, endRadii]) => [key, tuning(endRadii)]));
  },
};

const neighbours: Adapter = {
  family: 'ports',
  requires: ['radius_m', 'centre_distance_m', 'rho_kg_m3'],
  allows: AIR_KEYS,
  run: (inputs) => {
    const radiusM = asNumber(inputs.radius_m);
    const distanceM = asNumber(inputs.centre_distance_m);
    return {
      mean_inverse_distance_1_m: meanInverseDistancePerM(radiusM, distanceM),
      extra_mass_per_port_kg_m4: mutualMassKgPerM4(radiusM, distanceM, asNumber(inputs.rho_kg_m3)),
      extra_end_length_m: neighbourExtensionM(roundOfRadius(radiusM), [distanceM]),
    };
  },
};

const speed: Adapter = {
  family: 'ports',
  requires: ['SPL_dB', 'f_Hz', 'r_m', 'radius_m', 'rho_kg_m3', 'c_m_s', 'mu_Pa_s'],
  allows: AIR_KEYS,
  run: (inputs) => {
    const air = airOf(inputs);
    const frequencyHz = asNumber(inputs.f_Hz);
    const radiusM = asNumber(inputs.radius_m);
    const pressurePa = paOfDbSpl(asNumber(inputs.SPL_dB));
    const flow = volumeVelocityForPressure(pressurePa, frequencyHz, asNumber(inputs.r_m), air.densityKgPerM3);
    const peakMPerS = peakFromRms(portAirSpeedMPerS(flow, circleAreaM2(radiusM)));
    const state = portFlow(peakMPerS, frequencyHz, radiusM, air);
    return {
      U_rms_m3_s: flow,
      v_peak_m_s: peakMPerS,
      Mach_peak: state.mach,
      Re_peak_diameter: state.reynolds,
      displacement_peak_m: state.strokePeakM,
      Strouhal_wa_over_v: state.strouhal,
      stokes_number_a_over_delta: state.stokesNumber,
      Re_delta: state.layerReynolds,
    };
  },
};

const jet: Adapter = {
  family: 'ports',
  requires: ['v_peak_m_s', 'K_total', 'radius_m', 'rho_kg_m3'],
  allows: AIR_KEYS,
  run: (inputs) => {
    const [factor, speedPeak, density] = [inputs.K_total, inputs.v_peak_m_s, inputs.rho_kg_m3].map(asNumber) as [
      number,
      number,
      number,
    ];
    const areaM2 = circleAreaM2(asNumber(inputs.radius_m));
    return {
      R_specific_Pa_s_m: jetResistancePaSPerM(factor, speedPeak, density),
      R_acoustic_Pa_s_m3: jetResistancePaSPerM3(factor, speedPeak, areaM2, density),
      third_harmonic_ratio: JET_THIRD_HARMONIC,
    };
  },
};

/** Output keys carry the Reynolds number: `v_peak_at_85`. */
const layer: Adapter = {
  family: 'ports',
  requires: ['f_Hz', 'Re_delta', 'rho_kg_m3', 'c_m_s', 'mu_Pa_s'],
  allows: AIR_KEYS,
  run: (inputs) =>
    Object.fromEntries(
      asNumbers(inputs.Re_delta).map((reynolds) => [
        `v_peak_at_${reynolds}`,
        asNumbers(inputs.f_Hz).map((f) => speedForLayerReynolds(reynolds, f, airOf(inputs))),
      ]),
    ),
};

export const adapters: readonly Adapter[] = [ends, neighbours, speed, jet, layer];

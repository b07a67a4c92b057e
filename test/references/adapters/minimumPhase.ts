import { logCosineRipple } from '../../../src/core/measured/logCosineRipple.ts';
import {
  cepstrumResponse,
  minimumPhaseCepstrum,
  minimumPhaseTaps,
} from '../../../src/core/measured/minimumPhaseTaps.ts';
import { idealNearFieldLevelDb, nearFieldLevelDb } from '../../../src/core/measured/nearFieldLevel.ts';
import { oneZeroTaps } from '../../../src/core/measured/oneZeroTaps.ts';
import { reflectionFreeGate } from '../../../src/core/measured/reflectionFreeGate.ts';
import { constantSlopePhaseRad, semiInfiniteSlopePhaseRad } from '../../../src/core/measured/slopePhase.ts';
import { smoothingBiasDb } from '../../../src/core/measured/smoothPower.ts';
import type { Adapter } from '../adapter.ts';
import { asNumber, asNumbers, degFromRad } from '../convert.ts';

/** Speed of sound that the cases state once for all. */
const SOUND_SPEED_M_PER_S = 343.2;
const TRANSFORM_SIZE = 16384;

const ripple: Adapter = {
  family: 'mp-logcos',
  requires: ['A_neper', 'b', 'u_ln_w'],
  run: ({ A_neper, b, u_ln_w }) => {
    const points = asNumbers(u_ln_w).map((u) => logCosineRipple(asNumber(A_neper), asNumber(b), u));
    return { ln_mag: points.map((p) => p.lnMagnitude), phase_rad: points.map((p) => p.phaseRad) };
  },
};

const slope: Adapter = {
  family: 'mp-slope',
  requires: ['slope_dB_per_oct'],
  run: ({ slope_dB_per_oct }) => ({
    phase_deg: asNumbers(slope_dB_per_oct).map((db) => degFromRad(constantSlopePhaseRad(db))),
  }),
};

const oneZero: Adapter = {
  family: 'mp-digital',
  requires: ['a', 'w_rad'],
  run: ({ a, w_rad }) => {
    const cepstrum = minimumPhaseCepstrum(oneZeroTaps(asNumber(a)), TRANSFORM_SIZE);
    const points = asNumbers(w_rad).map((w) => cepstrumResponse(cepstrum, w));
    return {
      mag: points.map((p) => p.magnitude),
      phase_rad: points.map((p) => p.phaseRad),
      cepstrum_n1_to_n4: [...cepstrum.subarray(1, 5)],
    };
  },
};

const semiInfinite: Adapter = {
  family: 'minphase',
  requires: ['f_over_f0', 'slope_n'],
  run: ({ f_over_f0, slope_n }) => ({
    phase_deg: asNumbers(f_over_f0).map((x) => degFromRad(semiInfiniteSlopePhaseRad(asNumber(slope_n), x))),
  }),
};

const taps: Adapter = {
  family: 'minphase',
  requires: ['taps'],
  run: ({ taps }) => ({ min_phase_taps: [...minimumPhaseTaps(asNumbers(taps), TRANSFORM_SIZE)] }),
};

const smoothing: Adapter = {
  family: 'minphase',
  requires: ['n', 'slope_db_per_octave'],
  run: ({ n, slope_db_per_octave }) => ({
    bias_db: asNumbers(n).map((fraction) => smoothingBiasDb(asNumber(slope_db_per_octave), fraction)),
  }),
};

const nearField: Adapter = {
  family: 'minphase',
  requires: ['radius_m', 'distance_m', 'frequency_hz', 'mic_offset_m'],
  run: ({ radius_m, distance_m, frequency_hz, mic_offset_m }) => ({
    ideal_db: idealNearFieldLevelDb(asNumber(radius_m), asNumber(distance_m)),
    level_db: asNumbers(mic_offset_m).map((offset) =>
      nearFieldLevelDb(asNumber(radius_m), asNumber(distance_m), offset, asNumber(frequency_hz), SOUND_SPEED_M_PER_S),
    ),
  }),
};

const gate: Adapter = {
  family: 'minphase',
  requires: ['height_m', 'distance_m'],
  run: ({ height_m, distance_m }) => {
    const { timeS, lowestHz, resolutionHz } = reflectionFreeGate(
      asNumber(height_m),
      asNumber(distance_m),
      SOUND_SPEED_M_PER_S,
    );
    return { gate_s: timeS, lowest_frequency_hz: lowestHz, bin_spacing_hz: resolutionHz };
  },
};

export const adapters: readonly Adapter[] = [ripple, slope, oneZero, semiInfinite, taps, smoothing, nearField, gate];

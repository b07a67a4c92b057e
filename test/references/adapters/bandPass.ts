import {
  bandPassForLower,
  bandPassResponse,
  bandPassShape,
  radiatorBoxResponse,
  radiatorBoxTuningHz,
  radiatorNotchForTuningHz,
} from '../../../src/core/design/alignments/index.ts';
import type { Adapter, Inputs } from '../adapter.ts';
import { asNumber, asNumbers, dbOfAmplitude, litresFromM3, m3FromLitres, magnitude, ratio } from '../convert.ts';

const shape: Adapter = {
  family: 'bp4-b',
  requires: ['S'],
  run: ({ S }) => {
    const found = asNumbers(S).map(bandPassShape);
    return {
      b: found.map(({ b }) => b),
      b_half_power: found.map(({ bHalfPower }) => bHalfPower),
      ripple_dB: found.map(({ rippleRatio }) => dbOfAmplitude(rippleRatio)),
    };
  },
};

/** Levels are keyed by a whole number of hertz, which the inputs do not name: all of them up to here are given. */
const HIGHEST_HZ = 2000;
const WHOLE_HERTZ = Array.from({ length: HIGHEST_HZ }, (_, i) => i).filter((f) => f > 0);

const design: Adapter = {
  family: 'bp4-design',
  requires: ['fs_Hz', 'Qts', 'Vas_L', 'S', 'fL_Hz'],
  run: ({ fs_Hz, Qts, Vas_L, S, fL_Hz }) => {
    const driver = { fsHz: asNumber(fs_Hz), qts: asNumber(Qts), vasM3: m3FromLitres(asNumber(Vas_L)) };
    const found = bandPassForLower(driver, asNumber(S), asNumber(fL_Hz));
    if (!found.ok) return null;
    const box = found.value;
    return {
      b: bandPassShape(box.s).b,
      Qbp: box.qbp,
      fL_Hz: box.lowerHz,
      fH_Hz: box.upperHz,
      fB_Hz: box.tuningHz,
      Vf_L: litresFromM3(box.frontM3),
      Vr_L: litresFromM3(box.rearM3),
      gain_dB: dbOfAmplitude(box.gainRatio),
      G_dB_at: Object.fromEntries(
        WHOLE_HERTZ.map((f) => [String(f), dbOfAmplitude(magnitude(bandPassResponse(box, f)))]),
      ),
    };
  },
};

const boxOf = (inputs: Inputs, notchHz: number) => ({
  fsHz: asNumber(inputs.fs_Hz),
  qt: asNumber(inputs.QT),
  alpha: ratio(asNumber(inputs.Vas_L), asNumber(inputs.Vb_L)),
  delta: asNumber(inputs.delta),
  notchHz,
});

const radiator: Adapter = {
  family: 'pr-resp',
  requires: ['fs_Hz', 'QT', 'Vas_L', 'Vb_L', 'fP_Hz', 'delta', 'f_Hz'],
  run: (inputs) => {
    const box = boxOf(inputs, asNumber(inputs.fP_Hz));
    return {
      G_dB: asNumbers(inputs.f_Hz).map((f) => dbOfAmplitude(magnitude(radiatorBoxResponse(box, f)))),
      fB_Hz: radiatorBoxTuningHz(box.notchHz, box.delta),
      notch_Hz: box.notchHz,
    };
  },
};

const limit: Adapter = {
  family: 'pr-limit',
  requires: ['fs_Hz', 'QT', 'Vas_L', 'Vb_L', 'fB_Hz', 'delta'],
  run: (inputs) => {
    const box = boxOf(inputs, radiatorNotchForTuningHz(asNumber(inputs.fB_Hz), asNumber(inputs.delta)));
    return { G_dB_at_fs: dbOfAmplitude(magnitude(radiatorBoxResponse(box, box.fsHz))) };
  },
};

export const adapters: readonly Adapter[] = [shape, design, radiator, limit];

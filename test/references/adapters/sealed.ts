import {
  sealedForQtc,
  sealedInVolume,
  sealedPowerConstant,
  sealedResponse,
} from '../../../src/core/design/alignments/index.ts';
import type { Adapter } from '../adapter.ts';
import { asNumber, dbOfAmplitude, litresFromM3, m3FromLitres } from '../convert.ts';

const response: Adapter = {
  family: 'cb-qtc',
  requires: ['Qtc'],
  run: ({ Qtc }) => {
    const { f3OverFc, peakRatio, peakOverFc, gainAtFc } = sealedResponse(asNumber(Qtc));
    return {
      f3_over_fc: f3OverFc,
      peak_dB: dbOfAmplitude(peakRatio),
      fpeak_over_fc: peakOverFc,
      G_at_fc_dB: dbOfAmplitude(gainAtFc),
    };
  },
};

const design: Adapter = {
  family: 'cb-design',
  requires: ['fs_Hz', 'Qts', 'Vas_L', 'Qtc'],
  run: ({ fs_Hz, Qts, Vas_L, Qtc }) => {
    const driver = { fsHz: asNumber(fs_Hz), qts: asNumber(Qts), vasM3: m3FromLitres(asNumber(Vas_L)) };
    const box = sealedForQtc(driver, asNumber(Qtc));
    if (!box.ok) return null;
    const { alpha, volumeM3, fcHz, f3Hz } = box.value;
    return { alpha, Vb_L: litresFromM3(volumeM3), fc_Hz: fcHz, f3_Hz: f3Hz };
  },
};

const analysis: Adapter = {
  family: 'cb-analysis',
  requires: ['fs_Hz', 'Qts', 'Vas_L', 'Vb_L'],
  run: ({ fs_Hz, Qts, Vas_L, Vb_L }) => {
    const driver = { fsHz: asNumber(fs_Hz), qts: asNumber(Qts), vasM3: m3FromLitres(asNumber(Vas_L)) };
    const { fcHz, qtc, f3Hz, response: shape } = sealedInVolume(driver, m3FromLitres(asNumber(Vb_L)));
    return { fc_Hz: fcHz, Qtc: qtc, f3_Hz: f3Hz, peak_dB: dbOfAmplitude(shape.peakRatio) };
  },
};

const power: Adapter = {
  family: 'cb-kp',
  requires: ['Qtc', 'rho', 'c'],
  run: ({ Qtc, rho, c }) => ({
    kP: sealedPowerConstant(asNumber(Qtc), { densityKgPerM3: asNumber(rho), soundSpeedMPerS: asNumber(c) }),
  }),
};

export const adapters: readonly Adapter[] = [response, design, analysis, power];

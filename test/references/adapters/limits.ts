import {
  powerFromDisplacementW,
  pressureFromDisplacementPa,
  TEXTBOOK_AIR,
  volumeDisplacementM3,
} from '../../../src/core/acoustics/index.ts';
import { sealedMotion } from '../../../src/core/design/alignments/index.ts';
import type { Adapter } from '../adapter.ts';
import { asNumber, asNumbers, dbSplOfPa, scaled } from '../convert.ts';

const displacement: Adapter = {
  family: 'lim-vd-spl',
  requires: ['Sd_m2', 'xpeak_m', 'f_Hz', 'r_m', 'rho'],
  allows: ['c'],
  run: ({ Sd_m2, xpeak_m, f_Hz, r_m, rho, c }) => {
    const densityKgPerM3 = asNumber(rho);
    const air = {
      densityKgPerM3,
      soundSpeedMPerS: c === undefined ? TEXTBOOK_AIR.soundSpeedMPerS : asNumber(c),
    };
    const volumeM3 = volumeDisplacementM3(asNumber(Sd_m2), asNumber(xpeak_m));
    const [f, r] = [asNumber(f_Hz), asNumber(r_m)];
    return {
      SPL_dB: dbSplOfPa(pressureFromDisplacementPa(volumeM3, f, r, densityKgPerM3, 'half')),
      VD_m3: volumeM3,
      SPL_full_space_dB: dbSplOfPa(pressureFromDisplacementPa(volumeM3, f, r, densityKgPerM3, 'full')),
      PA_half_space_W: powerFromDisplacementW(volumeM3, f, air),
    };
  },
};

const sealedExcursion: Adapter = {
  family: 'lim-cb-x',
  requires: [
    'Re_ohm',
    'Bl_Tm',
    'Mms_kg',
    'Cms_m_per_N',
    'Rms_Ns_per_m',
    'Sd_m2',
    'Vb_m3',
    'V_rms',
    'f_Hz',
    'rho',
    'c',
    'r_m',
  ],
  run: (inputs) => {
    const driver = {
      reOhm: asNumber(inputs.Re_ohm),
      blTm: asNumber(inputs.Bl_Tm),
      mmsKg: asNumber(inputs.Mms_kg),
      cmsMPerN: asNumber(inputs.Cms_m_per_N),
      rmsKgPerS: asNumber(inputs.Rms_Ns_per_m),
      sdM2: asNumber(inputs.Sd_m2),
    };
    const air = { densityKgPerM3: asNumber(inputs.rho), soundSpeedMPerS: asNumber(inputs.c) };
    const at = { distanceM: asNumber(inputs.r_m), volumeM3: asNumber(inputs.Vb_m3) };
    const motions = asNumbers(inputs.f_Hz).map((f) => sealedMotion(driver, at, asNumber(inputs.V_rms), f, air));
    return {
      x_peak_mm: motions.map((motion) => scaled(motion.excursionPeakM, 3)),
      SPL_dB: motions.map((motion) => dbSplOfPa(motion.pressurePa)),
    };
  },
};

export const adapters: readonly Adapter[] = [displacement, sealedExcursion];

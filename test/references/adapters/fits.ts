import { movingMassFromAddedMass, vasFromTestBoxM3 } from '../../../src/core/acoustics/index.ts';
import {
  alphaFromPeaks,
  resonanceFromPeaksHz,
  ventedImpedancePeaks,
} from '../../../src/core/design/alignments/index.ts';
import { type DriverFit, fitDriver, type ImpedanceSweep } from '../../../src/core/design/fits/index.ts';
import { likelihoodRatio, schwarzCriterion, schwarzWeights } from '../../../src/core/math/index.ts';
import type { Adapter, Inputs } from '../adapter.ts';
import { angleDeg, asNumber, asNumbers, magnitude, radFromDeg, ratio, scaled } from '../convert.ts';

const fitted = (sweep: ImpedanceSweep): DriverFit => {
  const fit = fitDriver(sweep, { coil: 'choose', leadOhm: 0, dcOhm: null });
  if (!fit.ok) throw new Error(JSON.stringify(fit.problems));
  return fit.value;
};

/** The whole of an inductance where the coil is one; null where the sweep asks for another form. */
const inductanceH = ({ coil }: DriverFit): number | null => (coil.form === 'plain' ? (coil.leH?.value ?? null) : null);

const bySize: Adapter = {
  family: 'ts-impfit',
  requires: ['f_Hz', 'Z_mag_ohm'],
  allows: ['Z_phase_deg'],
  run: ({ f_Hz, Z_mag_ohm, Z_phase_deg }) => {
    const fit = fitted({
      frequenciesHz: Float64Array.from(asNumbers(f_Hz)),
      magnitudesOhm: Float64Array.from(asNumbers(Z_mag_ohm)),
      phasesRad: Z_phase_deg === undefined ? null : Float64Array.from(asNumbers(Z_phase_deg), radFromDeg),
    });
    const leH = inductanceH(fit);
    return {
      Re_ohm: fit.reOhm.value,
      fs_Hz: fit.fsHz.value,
      Qms: fit.qms.value,
      Qes: fit.qes.value,
      Le_mH: leH === null ? null : scaled(leH, 3),
    };
  },
};

const byParts: Adapter = {
  family: 'fit',
  requires: ['frequency_hz', 'z_re_ohm', 'z_im_ohm'],
  // The fit finds its own start.
  allows: ['start'],
  run: ({ frequency_hz, z_re_ohm, z_im_ohm }) => {
    const im = asNumbers(z_im_ohm);
    const impedances = asNumbers(z_re_ohm).map((re, i) => ({ re, im: im[i]! }));
    const fit = fitted({
      frequenciesHz: Float64Array.from(asNumbers(frequency_hz)),
      magnitudesOhm: Float64Array.from(impedances, magnitude),
      phasesRad: Float64Array.from(impedances, (z) => radFromDeg(angleDeg(z))),
    });
    return {
      re_ohm: fit.reOhm.value,
      le_h: inductanceH(fit),
      fs_hz: fit.fsHz.value,
      qms: fit.qms.value,
      qes: fit.qes.value,
      qts: fit.qts.value,
    };
  },
};

const twinPeaks: Adapter = {
  family: 'fit',
  requires: ['fs_hz', 'alpha', 'fb_hz'],
  run: ({ fs_hz, alpha, fb_hz }) => {
    const tuningHz = asNumber(fb_hz);
    const peaks = ventedImpedancePeaks(asNumber(fs_hz), tuningHz, asNumber(alpha));
    return {
      fl_hz: peaks.lowerHz,
      fh_hz: peaks.upperHz,
      fs_recovered_hz: resonanceFromPeaksHz(peaks, tuningHz),
      alpha_recovered: alphaFromPeaks(peaks, tuningHz),
    };
  },
};

const massAndBox: Adapter = {
  family: 'fit',
  requires: ['fs_hz', 'fs_with_mass_hz', 'added_mass_kg', 'fc_hz', 'qec', 'qes', 'box_m3'],
  run: (inputs: Inputs) => {
    const fsHz = asNumber(inputs.fs_hz);
    const boxM3 = asNumber(inputs.box_m3);
    const moving = movingMassFromAddedMass(fsHz, asNumber(inputs.fs_with_mass_hz), asNumber(inputs.added_mass_kg));
    const measured = {
      fsHz,
      qes: asNumber(inputs.qes),
      fctHz: asNumber(inputs.fc_hz),
      qect: asNumber(inputs.qec),
    };
    const vasM3 = vasFromTestBoxM3(measured, boxM3);
    return { mms_kg: moving.mmsKg, cms_m_n: moving.cmsMPerN, alpha: ratio(vasM3, boxM3), vas_m3: vasM3 };
  },
};

const modelChoice: Adapter = {
  family: 'fit',
  requires: ['n', 'rss', 'parameters'],
  run: ({ n, rss, parameters }) => {
    const count = asNumber(n);
    const sums = asNumbers(rss);
    const sizes = asNumbers(parameters);
    const criteria = schwarzWeights(sums.map((sum, i) => schwarzCriterion(count, sum, sizes[i]!)));
    const { statistic, probability } = likelihoodRatio(count, sums[0]!, sums[1]!, { from: sizes[0]!, to: sizes[1]! });
    return {
      delta_bic: criteria.differences,
      weight: criteria.weights,
      likelihood_ratio_statistic: statistic,
      p_value: probability,
    };
  },
};

export const adapters: readonly Adapter[] = [bySize, byParts, twinPeaks, massAndBox, modelChoice];

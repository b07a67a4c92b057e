import { efficiencyFromVas, totalQ } from '../../../src/core/acoustics/index.ts';
import {
  alphaFromPeaks,
  chebyshevRipple,
  flatVentedAlignment,
  keeleVented,
  margolisSmallVented,
  type RoughVented,
  resonanceFromPeaksHz,
  type VentedAlignment,
  ventedB4,
  ventedBb4,
  ventedBessel,
  ventedC4,
  ventedCoefficients,
  ventedExcursionPeak,
  ventedExcursionRatio,
  ventedImpedancePeaks,
  ventedPowerConstant,
  ventedQb3,
  ventedResponse,
} from '../../../src/core/design/alignments/index.ts';
import type { Adapter, Json } from '../adapter.ts';
import {
  asNumber,
  asNumbers,
  asText,
  dbOfAmplitude,
  litresFromM3,
  m3FromLitres,
  magnitude,
  percentFromRatio,
} from '../convert.ts';

const lossOrNone = (ql: unknown): number | null => (ql === null ? null : asNumber(ql));
const numbers = (box: VentedAlignment | null) =>
  box === null ? null : { QT: box.qt, h: box.h, alpha: box.alpha, f3_over_fs: box.f3OverFs };

const byName = (name: string, qt: number, ql: number | null): VentedAlignment | null => {
  if (name === 'QB3') return ventedQb3(qt, ql);
  if (name === 'C4' || name === 'SC4') return ventedC4(qt, ql);
  if (name === 'BB4') return ventedBb4(qt, ql);
  throw new RangeError(`no alignment is called ${name}`);
};

const coefficients: Adapter = {
  family: 'vb-coeffs-def',
  requires: ['h', 'alpha', 'QT', 'QL'],
  run: ({ h, alpha, QT, QL }) => ({
    ...ventedCoefficients({ h: asNumber(h), alpha: asNumber(alpha), qt: asNumber(QT), ql: lossOrNone(QL) }),
  }),
};

const b4: Adapter = {
  family: 'vb-b4',
  requires: ['QL'],
  allows: ['family'],
  run: ({ QL }) => numbers(ventedB4(lossOrNone(QL))),
};

const bessel: Adapter = {
  family: 'vb-bl4',
  requires: ['QL'],
  allows: ['family'],
  run: ({ QL }) => numbers(ventedBessel(lossOrNone(QL))),
};

const named = (family: string): Adapter => ({
  family,
  requires: ['family', 'QT', 'QL'],
  run: ({ family: name, QT, QL }) => numbers(byName(asText(name), asNumber(QT), lossOrNone(QL))),
});

const chebyshev = (family: string): Adapter => ({
  family,
  requires: ['QT', 'QL'],
  allows: ['family'],
  run: ({ QT, QL }) => {
    const box = ventedC4(asNumber(QT), lossOrNone(QL));
    if (box === null) return null;
    return { ...numbers(box), k: box.k, ripple_dB: dbOfAmplitude(chebyshevRipple(box.k)) };
  },
});

const ripple: Adapter = {
  family: 'vb-c4-ripple',
  requires: ['k'],
  run: ({ k }) => ({ ripple_dB: asNumbers(k).map((factor) => dbOfAmplitude(chebyshevRipple(factor))) }),
};

const response: Adapter = {
  family: 'vb-resp',
  requires: ['h', 'alpha', 'QT', 'QL', 'f_over_fs'],
  run: ({ h, alpha, QT, QL, f_over_fs }) => {
    const box = { h: asNumber(h), alpha: asNumber(alpha), qt: asNumber(QT), ql: lossOrNone(QL) };
    return { G_dB: asNumbers(f_over_fs).map((f) => dbOfAmplitude(magnitude(ventedResponse(box, f)))) };
  },
};

const peaks: Adapter = {
  family: 'vb-imp-peaks',
  requires: ['fs_Hz', 'fB_Hz', 'alpha'],
  run: ({ fs_Hz, fB_Hz, alpha }) => {
    const tuningHz = asNumber(fB_Hz);
    const found = ventedImpedancePeaks(asNumber(fs_Hz), tuningHz, asNumber(alpha));
    return {
      fL_Hz: found.lowerHz,
      fH_Hz: found.upperHz,
      fL_fH_over_fB_Hz: resonanceFromPeaksHz(found, tuningHz),
      alpha_backsolved: alphaFromPeaks(found, tuningHz),
    };
  },
};

const excursion: Adapter = {
  family: 'vb-xmax-b4',
  requires: ['QL', 'rho', 'c'],
  allows: ['family'],
  run: ({ QL, rho, c }) => {
    const box = ventedB4(lossOrNone(QL));
    if (box === null) return null;
    const peak = ventedExcursionPeak(box);
    return {
      X_max: peak.ratio,
      f_over_fs_of_max: peak.frequencyOverFs,
      X_at_fB: ventedExcursionRatio(box, box.h),
      kP_passband_only: ventedPowerConstant(box, { densityKgPerM3: asNumber(rho), soundSpeedMPerS: asNumber(c) }),
    };
  },
};

const forDriver: Adapter = {
  family: 'vb-small-example',
  requires: ['fs_Hz', 'QMS', 'QES', 'VAS_L', 'QL', 'c'],
  run: ({ fs_Hz, QMS, QES, VAS_L, QL, c }) => {
    const qts = totalQ(asNumber(QMS), asNumber(QES));
    const driver = { fsHz: asNumber(fs_Hz), qts, vasM3: m3FromLitres(asNumber(VAS_L)) };
    const box = flatVentedAlignment(driver, asNumber(QL));
    if (!box.ok) return null;
    const { alpha, h, volumeM3, tuningHz, f3Hz } = box.value;
    const efficiency = efficiencyFromVas(driver.fsHz, driver.vasM3, asNumber(QES), asNumber(c));
    return {
      QTS: qts,
      alpha,
      h,
      VB_L: litresFromM3(volumeM3),
      fB_Hz: tuningHz,
      f3_Hz: f3Hz,
      eta0_percent: percentFromRatio(efficiency),
    };
  },
};

const rough = (family: string, estimate: (qts: number) => RoughVented): Adapter => ({
  family,
  requires: ['Qts'],
  run: ({ Qts }): Json => {
    const { volumeOverVas, tuningOverFs, f3OverFs } = estimate(asNumber(Qts));
    return { Vb_over_Vas: volumeOverVas, fB_over_fs: tuningOverFs, f3_over_fs: f3OverFs };
  },
});

export const adapters: readonly Adapter[] = [
  coefficients,
  b4,
  bessel,
  named('vb-thiele'),
  named('vb-qb3'),
  named('vb-bb4'),
  chebyshev('vb-c4'),
  chebyshev('vb-sc4'),
  ripple,
  response,
  peaks,
  excursion,
  forDriver,
  rough('vb-keele-approx', keeleVented),
  rough('vb-ms-approx', margolisSmallVented),
];

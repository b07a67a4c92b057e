import {
  powerLawElements,
  powerLawFromInductance,
  resistorCoilOhm,
  semiInductanceOhm,
  seriesInductanceH,
  shortedCoilOhm,
} from '../../../src/core/acoustics/index.ts';
import { angularFrequency } from '../../../src/core/circuit/index.ts';
import type { Adapter, Json } from '../adapter.ts';
import { asNumber, asNumbers, magnitude } from '../convert.ts';

/** One answer for a number, a list of them for a list. */
const each = (x: Json | undefined, answer: (value: number) => Json): Json =>
  Array.isArray(x) ? asNumbers(x).map(answer) : answer(asNumber(x));

const powerLaw: Adapter = {
  family: 'coil',
  requires: ['K_SI', 'n', 'f_Hz'],
  run: ({ K_SI, n, f_Hz }) => {
    const [kOhmSn, exponent] = [asNumber(K_SI), asNumber(n)];
    const impedance = (hz: number) => semiInductanceOhm(kOhmSn, exponent, angularFrequency(hz));
    const elements = (hz: number) => powerLawElements({ kOhmSn, exponent }, angularFrequency(hz));
    return {
      Z_re: each(f_Hz, (hz) => impedance(hz).re),
      Z_im: each(f_Hz, (hz) => impedance(hz).im),
      L_series_H: each(f_Hz, (hz) => elements(hz).seriesH),
      L_parallel_H: each(f_Hz, (hz) => elements(hz).parallelH),
      R_parallel_ohm: each(f_Hz, (hz) => elements(hz).parallelOhm),
    };
  },
};

const dataSheet: Adapter = {
  family: 'coil',
  requires: ['Le_1kHz_H', 'n'],
  run: ({ Le_1kHz_H, n }) => {
    const law = (exponent: number) => powerLawFromInductance(asNumber(Le_1kHz_H), 1000, exponent, 'series');
    const size = (exponent: number): number =>
      magnitude(semiInductanceOhm(law(exponent).kOhmSn, exponent, angularFrequency(10000)));
    return {
      K_SI: each(n, (exponent) => law(exponent).kOhmSn),
      Zabs_10kHz_ohm: each(n, size),
      R_1kHz_ohm: each(n, (exponent) => powerLawElements(law(exponent), angularFrequency(1000)).seriesOhm),
    };
  },
};

const bridged: Adapter = {
  family: 'coil',
  requires: ['L1_H', 'L2_H', 'R2_ohm', 'f_Hz'],
  run: ({ L1_H, L2_H, R2_ohm, f_Hz }) => {
    const coil = { seriesH: asNumber(L1_H), bridgedH: asNumber(L2_H), bridgeOhm: asNumber(R2_ohm) };
    const impedance = (hz: number) => resistorCoilOhm(coil, angularFrequency(hz));
    return {
      Z_re: each(f_Hz, (hz) => impedance(hz).re),
      Z_im: each(f_Hz, (hz) => impedance(hz).im),
      L_eff_H: each(f_Hz, (hz) => seriesInductanceH(impedance(hz), angularFrequency(hz))),
    };
  },
};

const shorted: Adapter = {
  family: 'coil',
  requires: ['Leb_H', 'Le_H', 'Ke_SI', 'Rss_ohm', 'f_Hz'],
  run: ({ Leb_H, Le_H, Ke_SI, Rss_ohm, f_Hz }) => {
    const coil = {
      leakageH: asNumber(Leb_H),
      leH: asNumber(Le_H),
      semiOhmS05: asNumber(Ke_SI),
      shortingOhm: asNumber(Rss_ohm),
    };
    const impedance = (hz: number) => shortedCoilOhm(coil, angularFrequency(hz));
    return { Z_re: each(f_Hz, (hz) => impedance(hz).re), Z_im: each(f_Hz, (hz) => impedance(hz).im) };
  },
};

export const adapters: readonly Adapter[] = [powerLaw, dataSheet, bridged, shorted];

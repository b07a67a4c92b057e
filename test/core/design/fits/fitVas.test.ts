import { describe, expect, it } from 'vitest';
import { deriveDriver, movingMassFromAddedMass, vasFromTestBoxM3 } from '../../../../src/core/acoustics/index.ts';
import {
  driverEnteredOf,
  fitDriver,
  fitVas,
  type SecondSweep,
  type VasFit,
} from '../../../../src/core/design/fits/index.ts';
import { AIR, COILS, expectValue, type Made, madeSweep, noisy, WOOFER } from './madeSweep.ts';

const bulkPa = AIR.densityKgPerM3 * AIR.soundSpeedMPerS ** 2;
const TRUTH = {
  vasM3: bulkPa * WOOFER.sdM2 ** 2 * WOOFER.cmsMPerN,
  mmsKg: WOOFER.mmsKg,
  cmsMPerN: WOOFER.cmsMPerN,
  blTm: WOOFER.blTm,
  rmsKgPerS: WOOFER.rmsKgPerS,
  qes: 0.42,
};
const NAMES = Object.keys(TRUTH) as (keyof typeof TRUTH)[];
const options = { sdM2: WOOFER.sdM2, sdRelativeSd: 0, air: AIR, leadOhm: 0, massSpread: 0.05 };
const ADDED_KG = 0.022;
const VOLUME_M3 = 0.025;

const sweeps = (made: Made, noise: number, seed: number) => {
  const parameters = made.parameters ?? WOOFER;
  const heavier = { ...parameters, mmsKg: parameters.mmsKg + ADDED_KG };
  const free = noisy(madeSweep(made), noise, 3 * seed);
  const mass: SecondSweep = {
    kind: 'mass',
    sweep: noisy(madeSweep({ ...made, parameters: heavier }), noise, 3 * seed + 1),
    addedKg: ADDED_KG,
    relativeSd: 0,
  };
  const box = (further: Pick<Made, 'chamber' | 'parameters'>): SecondSweep => ({
    kind: 'box',
    sweep: noisy(madeSweep({ ...made, ...further }), noise, 3 * seed + 2),
    volumeM3: VOLUME_M3,
    relativeSd: 0,
  });
  return { free, mass, box };
};
const TIGHT = { chamber: { volumeM3: VOLUME_M3, leak: null, absorption: null } };
const worst = (fit: VasFit): number => Math.max(...NAMES.map((name) => Math.abs(fit[name].value / TRUTH[name] - 1)));

describe('fitVas without noise', () => {
  for (const [maker, made] of Object.entries(COILS).filter(([name]) => name !== 'shunted')) {
    const { free, mass, box } = sweeps(made, 0, 0);
    it(`finds all by added mass, coil ${maker}`, () => {
      const fit = expectValue(fitVas(free, mass, options));
      expect(worst(fit)).toBeLessThan(1e-5);
      expect(fit.coilForm).toBe(maker);
    });
    it(`finds all by a tight box, coil ${maker}`, () => {
      const fit = expectValue(fitVas(free, box(TIGHT), { ...options, massSpread: 1e-3 }));
      expect(worst(fit)).toBeLessThan(1e-3);
    });
  }

  it('sees the leak of a test box and takes it out', () => {
    const { free, box } = sweeps({}, 0, 0);
    const fcHz = 38 * Math.sqrt(1 + TRUTH.vasM3 / VOLUME_M3);
    const leaky = box({ chamber: { volumeM3: VOLUME_M3, leak: { q: 12, atHz: fcHz }, absorption: null } });
    const fit = expectValue(fitVas(free, leaky, { ...options, massSpread: 1e-3 }));
    expect(fit.boxLoss?.loss).toBe('leak');
    expect(fit.boxLoss?.q?.value).toBeCloseTo(12, 1);
    expect(Math.abs(fit.vasM3.value / TRUTH.vasM3 - 1)).toBeLessThan(1e-3);
  });

  it('lets a change of the air load cancel, as the formula for the known box does', () => {
    // R. H. Small 1972: Vas = Vt (fct Qect/(fs Qes) − 1), each curve fitted for itself.
    const heavier = { ...WOOFER, mmsKg: WOOFER.mmsKg * 1.08 };
    const { free, box } = sweeps({}, 0, 0);
    const boxed = box({ ...TIGHT, parameters: heavier });
    const together = expectValue(fitVas(free, boxed, { ...options, massSpread: 0.3 }));
    const [a, b] = [free, boxed.sweep].map((sweep) =>
      expectValue(fitDriver(sweep, { coil: 'choose', leadOhm: 0, dcOhm: null })),
    );
    const formula = vasFromTestBoxM3(
      { fsHz: a!.fsHz.value, qes: a!.qes.value, fctHz: b!.fsHz.value, qect: b!.qes.value },
      VOLUME_M3,
    );
    expect(Math.abs(formula / TRUTH.vasM3 - 1)).toBeLessThan(1e-6);
    expect(Math.abs(together.vasM3.value / formula - 1)).toBeLessThan(1e-3);
  });

  it('agrees with the two-frequency formula for an added mass', () => {
    const { free, mass } = sweeps({}, 0, 0);
    const [a, b] = [free, mass.sweep].map((sweep) =>
      expectValue(fitDriver(sweep, { coil: 'choose', leadOhm: 0, dcOhm: null })),
    );
    const { mmsKg } = movingMassFromAddedMass(a!.fsHz.value, b!.fsHz.value, ADDED_KG);
    expect(expectValue(fitVas(free, mass, options)).mmsKg.value / mmsKg).toBeCloseTo(1, 6);
  });
});

describe('fitVas with uncertain knowns', () => {
  it('carries the uncertainty of mass, volume and Sd (seed 2)', () => {
    const { free, mass } = sweeps({}, 0.01, 2);
    const sure = expectValue(fitVas(free, mass, options));
    const rough = expectValue(fitVas(free, { ...mass, relativeSd: 0.03 }, { ...options, sdRelativeSd: 0.02 }));
    expect(rough.vasM3.relativeSd).toBeCloseTo(Math.hypot(sure.vasM3.relativeSd, 0.03, 0.04), 10);
    expect(rough.mmsKg.relativeSd).toBeCloseTo(Math.hypot(sure.mmsKg.relativeSd, 0.03), 10);
    expect(rough.blTm.relativeSd).toBeCloseTo(Math.hypot(sure.blTm.relativeSd, 0.015), 10);
    expect(rough.qes).toEqual(sure.qes);
  });

  it('lets a box give the mass as uncertain as Sd squared, and Vas not (seed 2)', () => {
    const { free, box } = sweeps({}, 0.01, 2);
    const sure = expectValue(fitVas(free, box(TIGHT), options));
    const rough = expectValue(fitVas(free, box(TIGHT), { ...options, sdRelativeSd: 0.02 }));
    expect(rough.vasM3.relativeSd).toBeCloseTo(sure.vasM3.relativeSd, 12);
    expect(rough.mmsKg.relativeSd).toBeCloseTo(Math.hypot(sure.mmsKg.relativeSd, 0.04), 10);
    expect(rough.cmsMPerN.relativeSd).toBeCloseTo(Math.hypot(sure.cmsMPerN.relativeSd, 0.04), 10);
  });
});

describe('driverEnteredOf', () => {
  it('makes a data sheet from which the whole driver follows', () => {
    const { free, mass } = sweeps({}, 0, 0);
    const fit = expectValue(fitDriver(free, { coil: 'choose', leadOhm: 0, dcOhm: null }));
    const vas = { fit: expectValue(fitVas(free, mass, options)), sdM2: WOOFER.sdM2 };
    const { parameters, findings } = expectValue(deriveDriver(driverEnteredOf(fit, vas), AIR));
    expect(findings).toEqual([]);
    for (const name of ['reOhm', 'leH', 'blTm', 'mmsKg', 'cmsMPerN', 'rmsKgPerS', 'sdM2'] as const)
      expect(parameters[name] / WOOFER[name]).toBeCloseTo(1, 5);
    expect(driverEnteredOf(fit, null).vasM3).toBeUndefined();
  });
});

describe('fitVas refuses or warns', () => {
  it('when the sweeps are exchanged', () => {
    const { free, mass, box } = sweeps({}, 0, 0);
    const boxed = box(TIGHT);
    expect(fitVas(mass.sweep, { ...mass, sweep: free }, options)).toMatchObject({
      problems: [{ code: 'fits.wrong-way' }],
    });
    expect(fitVas(boxed.sweep, { ...boxed, sweep: free }, options)).toMatchObject({
      problems: [{ code: 'fits.wrong-way' }],
    });
  });
  it('when too little was added', () => {
    const free = madeSweep({ countPoints: 600 });
    const sweep = madeSweep({ countPoints: 600, parameters: { ...WOOFER, mmsKg: WOOFER.mmsKg + 0.002 } });
    const fit = expectValue(fitVas(free, { kind: 'mass', sweep, addedKg: 0.002, relativeSd: 0 }, options));
    expect(fit.findings.map(({ code }) => code)).toEqual(['fits.added-too-little']);
  });
});

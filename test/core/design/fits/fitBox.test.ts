import { describe, expect, it } from 'vitest';
import { ventedImpedancePeaks } from '../../../../src/core/design/alignments/index.ts';
import {
  type BoxFitOptions,
  compareBoxes,
  fitBox,
  impedancePeaks,
  USUAL_SPREAD,
} from '../../../../src/core/design/fits/index.ts';
import { stated, TUNING_HZ, VOLUME_M3, vented } from './madeBox.ts';
import { AIR, expectValue, madeSweep, noisy, WOOFER } from './madeSweep.ts';

const options: BoxFitOptions = { kind: 'vented', spread: USUAL_SPREAD, leadOhm: 0, filled: false };
const SURE = { re: 1e-3, fs: 1e-3, qms: 3e-3, qes: 1e-3, vas: 1e-3, mass: 1e-2 };

const near = (value: number, truth: number): number => Math.abs(value / truth - 1);

describe('fitBox on a vented box without noise', () => {
  for (const losses of [{ leak: 7 }, { absorption: 30 }, { port: 15 }, { leak: 12, absorption: 8 }, {}])
    it(`finds tuning, volume and losses: ${JSON.stringify(losses)}`, () => {
      const fit = expectValue(fitBox(vented(losses), WOOFER, AIR, { ...options, spread: SURE }));
      expect(near(fit.tuningHz.value, TUNING_HZ)).toBeLessThan(1e-3);
      expect(near(fit.apparentM3.value, VOLUME_M3)).toBeLessThan(1e-3);
      expect(fit.losses.map(({ loss }) => loss)).toEqual(Object.keys(losses));
      for (const { loss, q } of fit.losses)
        expect(near(q!.value, (losses as Record<string, number>)[loss]!)).toBeLessThan(1e-3);
      const inverse = Object.values(losses).reduce<number>((sum, q) => sum + 1 / q, 0);
      if (inverse > 0) expect(near(fit.totalQ!.value, 1 / inverse)).toBeLessThan(1e-3);
      else expect(fit.totalQ).toBeNull();
    });

  it('has the twin peaks where the lossless relations put them', () => {
    // R. H. Small 1973, part III; alpha = Vas/V.
    const bulkPa = AIR.densityKgPerM3 * AIR.soundSpeedMPerS ** 2;
    const alpha = (bulkPa * WOOFER.sdM2 ** 2 * WOOFER.cmsMPerN) / VOLUME_M3;
    const expected = ventedImpedancePeaks(38, TUNING_HZ, alpha);
    const sweep = vented({}, VOLUME_M3, { countPoints: 4000, parameters: { ...WOOFER, leH: 0 } });
    const [low, high] = impedancePeaks(sweep, 0.5).sort((a, b) => a.atHz - b.atHz);
    // Peaks lie on points 0.2 % apart.
    expect(near(low!.atHz, expected.lowerHz)).toBeLessThan(0.002);
    expect(near(high!.atHz, expected.upperHz)).toBeLessThan(0.002);
    const fit = expectValue(fitBox(vented({}), WOOFER, AIR, { ...options, spread: SURE }));
    expect(near(fit.alpha.value, alpha)).toBeLessThan(1e-3);
  });

  it('keeps the total of three losses where one can stand for all of them', () => {
    const fit = expectValue(fitBox(vented({ leak: 7, absorption: 60, port: 60 }), WOOFER, AIR, options));
    expect(near(fit.totalQ!.value, 1 / (1 / 7 + 2 / 60))).toBeLessThan(0.01);
    expect(near(fit.tuningHz.value, TUNING_HZ)).toBeLessThan(1e-3);
    expect(near(fit.apparentM3.value, VOLUME_M3)).toBeLessThan(0.01);
    expect(fit.lossWeights.leak).toBeGreaterThan(0.9);
  });

  it('says where it cannot tell losses apart (seed 1, 1 % noise)', () => {
    const fit = expectValue(fitBox(noisy(vented({ leak: 12, absorption: 8 }), 0.01, 1), WOOFER, AIR, options));
    expect(fit.separated).toBe(false);
    expect(fit.findings.map(({ code }) => code)).toEqual(['fits.losses-mixed']);
    expect(near(fit.totalQ!.value, 4.8)).toBeLessThan(0.05);
  });
});

describe('fitBox with 1 % noise', () => {
  it('names the loss that is out of the ordinary (seed 3)', () => {
    const findings = (losses: Parameters<typeof vented>[0], further: Partial<BoxFitOptions> = {}) =>
      expectValue(fitBox(noisy(vented(losses), 0.01, 3), WOOFER, AIR, { ...options, ...further })).findings.map(
        ({ code, values }) => `${code} ${values.loss ?? ''}`,
      );
    expect(findings({ leak: 2.5 })).toEqual(['fits.loss-unusual leak']);
    expect(findings({ port: 8 })).toEqual(['fits.loss-unusual port']);
    expect(findings({ absorption: 10 })).toEqual(['fits.loss-unusual absorption']);
    expect(findings({ absorption: 10 }, { filled: true })).toEqual([]);
    expect(findings({ leak: 9 })).toEqual([]);
  });

  it('sees that the driver is not the one that was measured (seed 3)', () => {
    const heavier = { ...WOOFER, mmsKg: WOOFER.mmsKg * 1.25 };
    const spread = { ...USUAL_SPREAD, fs: 0.005, mass: 0.3 };
    const fit = expectValue(
      fitBox(noisy(vented({ leak: 9 }, VOLUME_M3, { parameters: heavier }), 0.01, 3), WOOFER, AIR, {
        ...options,
        spread,
      }),
    );
    expect(fit.findings.map(({ code }) => code)).toEqual(['fits.driver-moved']);
    expect(fit.massRatio.value).toBeCloseTo(1.25, 1);
  });

  it('says that a closed port shows one peak (seed 5)', () => {
    const closed = madeSweep({ chamber: { volumeM3: VOLUME_M3, leak: stated(10, 60), absorption: null } });
    const result = fitBox(noisy(closed, 0.01, 5), WOOFER, AIR, options);
    const codes = (result.ok ? result.value.findings : result.problems).map(({ code }) => code);
    expect(codes.some((code) => code === 'fits.one-peak' || code === 'fits.not-determined')).toBe(true);
  });
});

describe('fitBox on a closed box', () => {
  it('finds resonance, volume and leak', () => {
    const bulkPa = AIR.densityKgPerM3 * AIR.soundSpeedMPerS ** 2;
    const alpha = (bulkPa * WOOFER.sdM2 ** 2 * WOOFER.cmsMPerN) / VOLUME_M3;
    const fcHz = 38 * Math.sqrt(1 + alpha);
    const sweep = madeSweep({ chamber: { volumeM3: VOLUME_M3, leak: stated(10, fcHz), absorption: null } });
    const fit = expectValue(fitBox(sweep, WOOFER, AIR, { ...options, kind: 'closed', spread: SURE }));
    expect(near(fit.tuningHz.value, fcHz)).toBeLessThan(1e-3);
    expect(near(fit.apparentM3.value, VOLUME_M3)).toBeLessThan(1e-3);
    expect(fit.losses.map(({ loss }) => loss)).toEqual(['leak']);
    expect(near(fit.losses[0]!.q!.value, 10)).toBeLessThan(1e-3);
  });
  it('finds absorption where that is the loss, and does not mistake it for a leak', () => {
    const sweep = madeSweep({ chamber: { volumeM3: VOLUME_M3, leak: null, absorption: stated(12, 60) } });
    const fit = expectValue(fitBox(sweep, WOOFER, AIR, { ...options, kind: 'closed', spread: SURE }));
    expect(fit.losses.map(({ loss }) => loss)).toEqual(['absorption']);
    // QA was stated at 60 Hz as 1/(ω C R): it goes with 1/ω.
    expect(near(fit.losses[0]!.q!.value, (12 * 60) / fit.tuningHz.value)).toBeLessThan(2e-3);
    expect(near(fit.apparentM3.value, VOLUME_M3)).toBeLessThan(1e-3);
    const noise = fitBox(noisy(sweep, 0.01, 7), WOOFER, AIR, { ...options, kind: 'closed' });
    expect(noise.ok).toBe(true);
  });
  it('refuses too few points', () => {
    const sweep = madeSweep({ countPoints: 9 });
    expect(fitBox(sweep, WOOFER, AIR, options)).toMatchObject({ ok: false, problems: [{ code: 'fits.few-points' }] });
  });
});

describe('compareBoxes', () => {
  it('shows what filling did, whatever Vas is (seeds 1 and 2, 0.3 % noise)', () => {
    const wrongVas = { ...WOOFER, sdM2: WOOFER.sdM2 * 1.1 };
    const fitted = (sweep: ReturnType<typeof vented>, seed: number) =>
      expectValue(fitBox(noisy(sweep, 0.003, seed), wrongVas, AIR, options));
    const before = fitted(vented({ leak: 9 }), 1);
    const after = fitted(vented({ leak: 9, absorption: 12 }, VOLUME_M3 * 1.15), 2);
    const effect = compareBoxes(before, after);
    expect(effect.volume.value).toBeCloseTo(1.15, 2);
    expect(effect.volume.low).toBeGreaterThan(1);
    // The same port on more air: lower by the root.
    expect(effect.tuning.value).toBeCloseTo(1 / Math.sqrt(1.15), 2);
    expect(effect.addedLoss).toBeCloseTo(1 / 12, 1);
  });
});

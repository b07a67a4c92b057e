import { describe, expect, it } from 'vitest';
import { fitVas, type SecondSweep, type VasFit } from '../../../../src/core/design/fits/index.ts';
import { AIR, expectValue, madeSweep, noisy, WOOFER } from './madeSweep.ts';

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

describe('fitVas with 1 % noise', () => {
  const countPoints = 80;
  const free = madeSweep({ countPoints });
  const loaded = madeSweep({ countPoints, parameters: { ...WOOFER, mmsKg: WOOFER.mmsKg + 0.022 } });
  const boxed = madeSweep({ countPoints, chamber: { volumeM3: 0.025, leak: null, absorption: null } });
  const seconds: readonly ((seed: number) => SecondSweep)[] = [
    (seed) => ({ kind: 'mass', sweep: noisy(loaded, 0.01, 3 * seed + 1), addedKg: 0.022, relativeSd: 0 }),
    (seed) => ({ kind: 'box', sweep: noisy(boxed, 0.01, 3 * seed + 2), volumeM3: 0.025, relativeSd: 0 }),
  ];
  for (const second of seconds)
    it(`holds the truth in its intervals, by ${second(0).kind} (seeds 0 to 59)`, () => {
      let inside = 0;
      for (let seed = 0; seed < 60; seed++) {
        const fitted: VasFit = expectValue(fitVas(noisy(free, 0.01, 3 * seed), second(seed), options));
        if (NAMES.every((name) => fitted[name].low <= TRUTH[name] && TRUTH[name] <= fitted[name].high)) inside++;
      }
      // All six at once: 95 % of 60 is 57 ± 1.7; below 52 has a chance of 1 in 250 at exactly 95 %.
      expect(inside).toBeGreaterThanOrEqual(52);
    });
});

import { describe, expect, it } from 'vitest';
import { compareLevels, fitDriver } from '../../../../src/core/design/fits/index.ts';
import { expectValue, madeSweep, noisy, WOOFER } from './madeSweep.ts';

const fitted = (seed: number, cms: number, rms: number, noise = 0.01) =>
  expectValue(
    fitDriver(
      noisy(
        madeSweep({ parameters: { ...WOOFER, cmsMPerN: WOOFER.cmsMPerN * cms, rmsKgPerS: WOOFER.rmsKgPerS * rms } }),
        noise,
        seed,
      ),
      { coil: 'choose', leadOhm: 0, dcOhm: null },
    ),
  );

describe('compareLevels', () => {
  it('finds nothing between two sweeps of one driver (seeds 1 and 2)', () => {
    expect(compareLevels(fitted(1, 1, 1), fitted(2, 1, 1)).findings).toEqual([]);
  });
  it('does not take noise for a change (5 %, seeds 1 and 2)', () => {
    const { changes, findings } = compareLevels(fitted(1, 1, 1, 0.05), fitted(2, 1, 1, 0.05));
    expect(Math.max(...changes.map(({ change }) => Math.abs(change)))).toBeGreaterThan(0.02);
    expect(findings).toEqual([]);
  });
  it('finds a softer suspension and a larger loss at the higher level (seeds 1 and 2)', () => {
    const { findings, changes } = compareLevels(fitted(1, 1, 1), fitted(2, 1.15, 1.3));
    expect(findings.map(({ values }) => values.quantity)).toEqual(['fsHz', 'qms', 'qes']);
    // fs falls by the root of the compliance's ratio.
    expect(changes[1]!.change).toBeCloseTo(1 / Math.sqrt(1.15) - 1, 2);
  });
});

import { describe, expect, it } from 'vitest';
import { fitDriver } from '../../../../src/core/design/fits/index.ts';
import type { DriverParameters } from '../../../../src/core/speaker/model.ts';
import { cramerRaoSds } from './cramerRao.ts';
import { COILS, drawnDriver, expectValue, madeSweep, noisy, TRUTH, WOOFER } from './madeSweep.ts';

const NAMES = ['reOhm', 'fsHz', 'qms', 'qes', 'qts'] as const;
const options = { coil: 'choose', leadOhm: 0, dcOhm: null } as const;

describe('fitDriver with 1 % noise', () => {
  const coilLogs: Readonly<Record<string, (p: DriverParameters, by: readonly number[]) => DriverParameters>> = {
    plain: (p, [a = 0]) => ({ ...p, leH: p.leH * Math.exp(a) }),
    semi: (p, [a = 0, b = 0]) => ({ ...p, semiInductance: moved(p, a, b) }),
    both: (p, [a = 0, b = 0, c = 0]) => ({ ...p, leH: p.leH * Math.exp(a), semiInductance: moved(p, b, c) }),
  };
  const moved = ({ semiInductance }: DriverParameters, a: number, b: number) => ({
    kOhmSn: semiInductance!.kOhmSn * Math.exp(a),
    exponent: semiInductance!.exponent * Math.exp(b),
  });
  /** The woofer with Re, fs, Qms, Qes moved by factors, all else equal. */
  const shifted = (p: DriverParameters, [re = 0, fs = 0, qms = 0, qes = 0]: readonly number[]): DriverParameters => ({
    ...p,
    reOhm: p.reOhm * Math.exp(re),
    cmsMPerN: p.cmsMPerN * Math.exp(-2 * fs),
    rmsKgPerS: p.rmsKgPerS * Math.exp(fs - qms),
    blTm: p.blTm * Math.exp((fs + re - qes) / 2),
  });

  for (const maker of ['plain', 'semi', 'both'] as const)
    for (const phase of [true, false])
      it(`holds the truth in its intervals, coil ${maker}, ${phase ? 'with' : 'without'} phase, fitted as each form (seeds 0 to 99)`, () => {
        const made = COILS[maker]!;
        const base = made.parameters ?? WOOFER;
        const count = 4 + { plain: 1, semi: 2, both: 3 }[maker];
        const sds = cramerRaoSds(
          (by) => madeSweep({ parameters: coilLogs[maker]!(shifted(base, by), by.slice(4)), phase, countPoints: 80 }),
          count,
          0.01,
        );
        const clean = madeSweep({ ...made, phase, countPoints: 80 });
        let together = 0;
        let widest = 0;
        for (let seed = 0; seed < 100; seed++) {
          const sweep = noisy(clean, 0.01, seed);
          const fit = expectValue(fitDriver(sweep, options));
          if (NAMES.every((name) => fit[name].low <= TRUTH[name] && TRUTH[name] <= fit[name].high)) together++;
          NAMES.slice(0, 4).forEach((name, k) => {
            widest = Math.max(widest, Math.log(fit[name].high / fit[name].low) / (2 * 1.96 * sds[k]!));
          });
          if (seed >= 20) continue;
          // Resonance and Re do not hang on the form that the coil is wanted in.
          const other = expectValue(fitDriver(sweep, { ...options, coil: maker === 'plain' ? 'semi' : 'plain' }));
          expect(other.fsHz).toEqual(fit.fsHz);
          expect(other.qes).toEqual(fit.qes);
          expect(other.coil.form).not.toBe(maker);
        }
        // All five at once; the intervals are made for 95.
        expect(together).toBeGreaterThanOrEqual(90);
        expect(widest).toBeLessThan(3);
      });

  it('holds the truth of any driver in its intervals (seeds 0 to 149)', () => {
    let together = 0;
    for (let seed = 0; seed < 150; seed++) {
      const { made, truth } = drawnDriver(seed);
      const fit = expectValue(fitDriver(noisy(madeSweep(made), 0.01, seed), options));
      if (NAMES.every((name) => fit[name].low <= truth[name] && truth[name] <= fit[name].high)) together++;
    }
    // 95 % of 150 is 142.5 ± 2.7; below 135 has a chance of 1 in 300 at exactly 95 %.
    expect(together).toBeGreaterThanOrEqual(135);
  });

  it('is no wider than it must be: the spread of 300 fits is the stated deviation (seeds 500 to 799)', () => {
    const clean = madeSweep({ countPoints: 80 });
    const logs: number[] = [];
    let stated = 0;
    for (let seed = 500; seed < 800; seed++) {
      const fit = expectValue(fitDriver(noisy(clean, 0.01, seed), options));
      logs.push(Math.log(fit.qms.value / TRUTH.qms));
      stated += fit.qms.relativeSd / 300;
    }
    const spread = Math.sqrt(logs.reduce((sum, x) => sum + x * x, 0) / 300);
    // A deviation of 300 draws is known to 4 %; three of these.
    expect(Math.abs(spread / stated - 1)).toBeLessThan(0.12);
  });
});

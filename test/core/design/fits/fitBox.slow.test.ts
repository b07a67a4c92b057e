import { describe, expect, it } from 'vitest';
import { fitBox, USUAL_SPREAD } from '../../../../src/core/design/fits/index.ts';
import { TUNING_HZ, VOLUME_M3, vented } from './madeBox.ts';
import { AIR, expectValue, noisy, WOOFER } from './madeSweep.ts';

describe('fitBox with 1 % noise', () => {
  it('holds the truth in its intervals (seeds 0 to 59)', () => {
    const clean = vented({ leak: 7 }, VOLUME_M3, { countPoints: 100 });
    let inside = 0;
    for (let seed = 0; seed < 60; seed++) {
      const fitted = expectValue(
        fitBox(noisy(clean, 0.01, seed), WOOFER, AIR, {
          kind: 'vented',
          spread: USUAL_SPREAD,
          leadOhm: 0,
          filled: false,
        }),
      );
      const holds = ({ low, high }: { low: number; high: number }, truth: number) => low <= truth && truth <= high;
      if (holds(fitted.tuningHz, TUNING_HZ) && holds(fitted.apparentM3, VOLUME_M3) && holds(fitted.totalQ!, 7))
        inside++;
    }
    // 95 % of 60 is 57 ± 1.7; below 52 has a chance of 1 in 250.
    expect(inside).toBeGreaterThanOrEqual(52);
  });
});

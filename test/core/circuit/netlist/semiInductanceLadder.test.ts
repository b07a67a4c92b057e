import { describe, expect, it } from 'vitest';
import { semiInductanceLadder } from '../../../../src/core/circuit/index.ts';

describe('semiInductanceLadder', () => {
  it.each([0.3, 0.5, 0.62, 0.75, 0.9])('follows K (jω)^%d within half a per cent from 20 Hz to 20 kHz', (exponent) => {
    const ladder = semiInductanceLadder({ kOhmSn: 0.02, exponent }, 20, 20000)!;
    expect(ladder.greatestError).toBeLessThan(0.005);
    // Its own count of the error, by another path: the impedance of each section as a quotient of complex numbers.
    for (const hz of [20, 333, 1000, 20000]) {
      const omega = 2 * Math.PI * hz;
      let [re, im] = [ladder.seriesOhm, omega * ladder.seriesHenry];
      for (const { ohm, henry } of ladder.sections) {
        const x = omega * henry;
        const squared = ohm * ohm + x * x;
        re += (ohm * x * x) / squared;
        im += (ohm * ohm * x) / squared;
      }
      const magnitude = 0.02 * omega ** exponent;
      expect(Math.abs(Math.hypot(re, im) / magnitude - 1)).toBeLessThan(0.005);
      expect(Math.abs(Math.atan2(im, re) - (exponent * Math.PI) / 2)).toBeLessThan(0.005);
    }
  });

  it('has no ladder for exponents from which no R-L network can be made', () => {
    expect(semiInductanceLadder({ kOhmSn: 0.02, exponent: 1 }, 20, 20000)).toBeNull();
    expect(semiInductanceLadder({ kOhmSn: 0.02, exponent: 0 }, 20, 20000)).toBeNull();
  });
});

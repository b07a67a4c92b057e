import { describe, expect, it } from 'vitest';
import { idealDryAir, rootSoundSpeed, roughSoundSpeed } from '../../../src/core/acoustics/index.ts';

describe('rules of thumb for the speed of sound', () => {
  it('meet at 0 °C and stay within 0.1 % of one another and of the ideal gas from 0 to 30 °C', () => {
    expect(roughSoundSpeed(0)).toBe(rootSoundSpeed(0));
    for (let t = 0; t <= 30; t += 5) {
      expect(Math.abs(roughSoundSpeed(t) / rootSoundSpeed(t) - 1)).toBeLessThan(1.4e-3);
      expect(Math.abs(rootSoundSpeed(t) / idealDryAir(t, 101325).soundSpeedMPerS - 1)).toBeLessThan(1e-3);
    }
  });

  it('give the textbook figure of about 343 m/s at 20 °C', () => {
    expect(Math.abs(roughSoundSpeed(20) - 343.4)).toBeLessThan(0.05);
  });
});

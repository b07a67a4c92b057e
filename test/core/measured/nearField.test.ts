import { describe, expect, it } from 'vitest';
import { idealNearFieldLevelDb, nearFieldLevelDb } from '../../../src/core/measured/nearFieldLevel.ts';
import { reflectionFreeGate } from '../../../src/core/measured/reflectionFreeGate.ts';

describe('nearFieldLevelDb', () => {
  it('is 26.02 dB for 0.1 m radius at 1 m and tends to it at low frequencies', () => {
    // D. B. Keele, J. Audio Eng. Soc. 22 (1974) 154.
    expect(idealNearFieldLevelDb(0.1, 1)).toBeCloseTo(26.0206, 4);
    expect(nearFieldLevelDb(0.1, 1, 0, 1, 343.2)).toBeCloseTo(26.0206, 4);
    expect(nearFieldLevelDb(0.1, 1, 0, 200, 343.2)).toBeCloseTo(25.972, 3);
  });
  it('agrees with the Rayleigh integral over the piston on its axis', () => {
    const [a, z, f, c] = [0.1, 0.02, 700, 343.2];
    const k = (2 * Math.PI * f) / c;
    const n = 4000;
    let [re, im] = [0, 0];
    for (let i = 0; i < n; i++) {
      const ring = (a * (i + 0.5)) / n;
      const distance = Math.hypot(ring, z);
      const weight = (ring * a) / n / distance;
      re += weight * Math.cos(k * distance);
      im -= weight * Math.sin(k * distance);
    }
    const far = a ** 2 / 2;
    expect(nearFieldLevelDb(a, 1, z, f, c)).toBeCloseTo(20 * Math.log10(Math.hypot(re, im) / far), 5);
  });
});

describe('reflectionFreeGate', () => {
  it('is the detour over the floor', () => {
    // 1.2 m high, 1 m apart: √(0.25 + 1.44) = 1.3 m each way.
    expect(reflectionFreeGate(1.2, 1, 343.2).timeS).toBeCloseTo(1.6 / 343.2, 12);
    expect(reflectionFreeGate(1.2, 1, 343.2).lowestHz).toBeCloseTo(214.5, 10);
  });
});

import { expect, test } from 'vitest';
import { wrappedPhaseDeg } from '../../src/plot/index.ts';

const frequenciesHz = Float64Array.from({ length: 1000 }, (_, index) => 20 * 1000 ** (index / 999));
const curve = (at: (omega: number) => readonly [number, number]) => {
  const points = [...frequenciesHz].map((hz) => at(2 * Math.PI * hz));
  return { re: Float64Array.from(points, (p) => p[0]), im: Float64Array.from(points, (p) => p[1]) };
};
const delay = (seconds: number) => curve((omega) => [Math.cos(omega * seconds), -Math.sin(omega * seconds)]);

test('a pure delay that is taken out leaves no angle', () => {
  // 7.3 ms is a path of 2.5 m: 146 turns at 20 kHz.
  for (const degrees of wrappedPhaseDeg(delay(0.0073), frequenciesHz, 0.0073)) {
    expect(Math.abs(degrees)).toBeLessThan(1e-8);
  }
});

test('a first-order low-pass agrees with its closed form -atan(f / fc)', () => {
  const lowPass = curve((omega) => {
    const ratio = omega / (2 * Math.PI * 500);
    return [1 / (1 + ratio ** 2), -ratio / (1 + ratio ** 2)];
  });
  const phase = wrappedPhaseDeg(lowPass, frequenciesHz, 0);
  frequenciesHz.forEach((hz, index) => {
    expect(phase[index]).toBeCloseTo((-Math.atan(hz / 500) * 180) / Math.PI, 9);
  });
});

test('angles stay within half a turn either way', () => {
  for (const degrees of wrappedPhaseDeg(delay(0.002), frequenciesHz, 0))
    expect(Math.abs(degrees)).toBeLessThanOrEqual(180);
});

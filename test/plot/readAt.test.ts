import { expect, test } from 'vitest';
import { readAt } from '../../src/plot/index.ts';

test('a straight line over the logarithm of frequency is read exactly', () => {
  // 6.0206 dB an octave, as a first-order slope has far from its corner.
  const frequenciesHz = Array.from({ length: 40 }, (_, index) => 20 * 2 ** (index / 4));
  const values = frequenciesHz.map((hz) => 20 * Math.log10(hz));
  expect(readAt(frequenciesHz, values, 333)).toBeCloseTo(20 * Math.log10(333), 10);
  expect(readAt(frequenciesHz, values, 20)).toBeCloseTo(20 * Math.log10(20), 12);
});

test('1000 points over three decades read a resonance of Q 5 to 0.0052 dB', () => {
  // Linear interpolation: h²/8 · 8.686 · 4Q² = 0.0052 dB with h = ln(1000)/999 and Q = 5.
  const levelDb = (hz: number) => -10 * Math.log10((1 - (hz / 432.1) ** 2) ** 2 + (hz / 432.1 / 5) ** 2);
  const frequenciesHz = Array.from({ length: 1000 }, (_, index) => 20 * 1000 ** (index / 999));
  const values = frequenciesHz.map(levelDb);
  for (const hz of [50.5, 400, 431.9, 433.7, 1234.5]) {
    expect(Math.abs((readAt(frequenciesHz, values, hz) ?? 999) - levelDb(hz))).toBeLessThan(0.0052);
  }
});

test('nothing is read outside the curve or beside a gap', () => {
  expect(readAt([100, 200], [1, 2], 99.9)).toBeNull();
  expect(readAt([100, 200], [1, 2], 200.1)).toBeNull();
  expect(readAt([100, 200, 400], [1, Number.NaN, 2], 150)).toBeNull();
  expect(readAt([], [], 150)).toBeNull();
});

test('a wrapped angle is joined the short way round', () => {
  const half = Math.sqrt(100 * 200);
  expect(Math.abs(readAt([100, 200], [170, -170], half, 360) ?? 0)).toBeCloseTo(180, 9);
  expect(readAt([100, 200], [10, 20], half, 360)).toBeCloseTo(15, 9);
});

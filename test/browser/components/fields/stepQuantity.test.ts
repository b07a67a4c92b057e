import { expect, test } from 'vitest';
import { dragQuantity } from '../../../../src/ui/fields/dragQuantity.ts';
import { stepKeysOf } from '../../../../src/ui/fields/stepKeysOf.ts';
import { type Stepping, steppingOf } from '../../../../src/ui/fields/stepping.ts';
import { stepQuantity } from '../../../../src/ui/fields/stepQuantity.ts';

const up = { direction: 1, coarse: false, fine: false } as const;
const down = { ...up, direction: -1 } as const;
const series: Stepping = { by: 'series' };
const still = { dxPx: 0, dyPx: 0, shift: false, alt: false };

test('resistors, capacitors and coils go along the chosen series, a decade with Shift, the finest series with Alt', () => {
  expect(steppingOf('capacitance')).toEqual(series);
  expect(stepQuantity(6.8e-6, series, up, 'E12', 'metric')).toBe(8.2e-6);
  expect(stepQuantity(6.8e-6, series, down, 'E6', 'metric')).toBe(4.7e-6);
  // From a value off the series to its neighbour: IEC 60063.
  expect(stepQuantity(7, series, up, 'E24', 'metric')).toBe(7.5);
  expect(stepQuantity(8.2, series, { ...up, coarse: true }, 'E12', 'metric')).toBe(82);
  expect(stepQuantity(10, series, { ...up, fine: true }, 'E12', 'metric')).toBe(10.2);
});

test('lengths step by 1 mm or 1/16 in, volumes by 0.1 L, angles by 1°, and land on whole steps', () => {
  const length = steppingOf('length');
  expect(stepQuantity(0.27, length, up, 'E12', 'metric')).toBe(0.271);
  expect(stepQuantity(0.2703, length, up, 'E12', 'metric')).toBe(0.271);
  expect(stepQuantity(0.2703, length, down, 'E12', 'metric')).toBe(0.27);
  expect(stepQuantity(0.27, length, { ...up, coarse: true }, 'E12', 'metric')).toBe(0.28);
  expect(stepQuantity(0.27, length, { ...up, fine: true }, 'E12', 'metric')).toBe(0.2701);
  expect(stepQuantity(0.0254, length, up, 'E12', 'imperial')).toBeCloseTo(0.0254 * (17 / 16), 9);
  expect(stepQuantity(0.0246, steppingOf('volume'), up, 'E12', 'metric')).toBe(0.0247);
  expect(stepQuantity(-3, steppingOf('angle'), down, 'E12', 'metric')).toBe(-4);
});

test('other sizes step by one in the second digit and stay above 0', () => {
  const digit: Stepping = { by: 'digit' };
  expect(stepQuantity(31, digit, up, 'E12', 'metric')).toBe(32);
  expect(stepQuantity(780, digit, down, 'E12', 'metric')).toBe(770);
  // Down from a power of ten the smaller decade's step holds, so that no step skips ten values.
  expect(stepQuantity(100, digit, down, 'E12', 'metric')).toBe(99);
  expect(stepQuantity(0, digit, up, 'E12', 'metric')).toBe(0);
});

test('dragging changes positive sizes by a factor and lengths by 1 mm a pixel', () => {
  expect(dragQuantity(6.8e-6, series, { ...still, dxPx: 240 }, 'metric')).toBe(6.8e-5);
  expect(dragQuantity(6.8e-6, series, { ...still, dxPx: -240 }, 'metric')).toBe(6.8e-7);
  expect(dragQuantity(6.8e-6, series, { ...still, dxPx: 24, shift: true }, 'metric')).toBe(6.8e-5);
  const length = steppingOf('length');
  expect(dragQuantity(0.27, length, { ...still, dxPx: -12 }, 'metric')).toBe(0.258);
  expect(dragQuantity(0.27, length, { ...still, dxPx: 12, alt: true }, 'metric')).toBe(0.2712);
});

test('arrow and page keys step, with Ctrl they are left to the browser', () => {
  const plain = { shiftKey: false, altKey: false, ctrlKey: false, metaKey: false };
  expect(stepKeysOf({ ...plain, key: 'ArrowUp' })).toEqual(up);
  expect(stepKeysOf({ ...plain, key: 'PageDown' })).toEqual({ ...down, coarse: true });
  expect(stepKeysOf({ ...plain, key: 'ArrowDown', altKey: true })).toEqual({ ...down, fine: true });
  expect(stepKeysOf({ ...plain, key: 'ArrowUp', ctrlKey: true })).toBeNull();
  expect(stepKeysOf({ ...plain, key: 'a' })).toBeNull();
});

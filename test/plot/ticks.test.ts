import { expect, test } from 'vitest';
import { frequencyTicks, valueTicks } from '../../src/plot/index.ts';

const labels = (ticks: readonly { label: string }[]) => ticks.map((tick) => tick.label).filter((label) => label !== '');

test('frequency lines are labelled at 1, 2 and 5 and stand at every multiple', () => {
  const ticks = frequencyTicks([20, 20000], 300);
  expect(labels(ticks)).toEqual(['20', '50', '100', '200', '500', '1k', '2k', '5k', '10k', '20k']);
  expect(ticks.map((tick) => tick.hz).filter((hz) => hz >= 100 && hz <= 1000)).toEqual([
    100, 200, 300, 400, 500, 600, 700, 800, 900, 1000,
  ]);
});

test('narrow decades keep the labels of the decades and of the ends only', () => {
  expect(labels(frequencyTicks([20, 20000], 95))).toEqual(['20', '100', '1k', '10k', '20k']);
});

test('a label that would touch that of an end is left out; its line stays', () => {
  const ticks = frequencyTicks([20, 20000], 60);
  expect(labels(ticks)).toEqual(['20', '100', '1k', '20k']);
  expect(ticks.some((tick) => tick.hz === 10000)).toBe(true);
});

test('value lines take the roundest step that is not too many', () => {
  expect(labels(valueTicks([50, 100], 11))).toEqual([
    '50',
    '55',
    '60',
    '65',
    '70',
    '75',
    '80',
    '85',
    '90',
    '95',
    '100',
  ]);
  expect(labels(valueTicks([50, 100], 6))).toEqual(['50', '60', '70', '80', '90', '100']);
  expect(labels(valueTicks([0, 0.5], 6))).toEqual(['0.0', '0.1', '0.2', '0.3', '0.4', '0.5']);
  expect(labels(valueTicks([-180, 180], 9, [45, 90, 180]))).toEqual([
    '−180',
    '−135',
    '−90',
    '−45',
    '0',
    '45',
    '90',
    '135',
    '180',
  ]);
});

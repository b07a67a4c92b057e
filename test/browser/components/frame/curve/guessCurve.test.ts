import { expect, test } from 'vitest';
import { guessCurve } from '../../../../../src/ui/frame/curve/guessCurve.ts';

const DRIVERS = [
  { id: 't', name: '28 mm dome', role: 'tweeter' },
  { id: 'm', name: '110 mm cone', role: 'mid' },
  { id: 'w', name: 'Long throw 220', role: 'woofer' },
] as const;

test.each([
  ['left.txt', 'left'],
  ['Speaker_RIGHT_2m.txt', 'right'],
  ['room-r.frd', 'right'],
  ['room l.zma', 'left'],
  ['channel-a.txt', 'left'],
  ['R1 across the terminals.txt', 'left'],
  ['left-and-right.txt', 'left'],
  ['mid-impedance.txt', 'driver m'],
  ['tweeter 2.txt', 'driver t'],
  ['WooferNear.txt', 'driver w'],
  ['right_woofer.txt', 'driver w'],
  ['long-throw-220_right.txt', 'driver w'],
  ['28mm-dome.txt', 'driver t'],
  ['midnight.txt', 'left'],
  ['amid.txt', 'left'],
  ['mid-and-tweeter.txt', 'left'],
])('%s belongs to %s', (fileName, owner) => {
  expect(guessCurve(fileName, DRIVERS).owner).toBe(owner);
});

test('a role that two drivers have says nothing', () => {
  const twins = [...DRIVERS, { id: 'w2', name: 'Second', role: 'woofer' } as const];
  expect(guessCurve('woofer.txt', twins).owner).toBe('left');
  expect(guessCurve('second-woofer.txt', twins).owner).toBe('driver w2');
});

test.each([
  ['left_0.4m.txt', 0.4],
  ['left 40cm.txt', 0.4],
  ['mid-1,5_m.txt', 1.5],
  ['1m', 1],
  ['left-0.4m', 0.4],
  ['28mm-dome.txt', null],
  ['W12M.txt', null],
  ['v1.2m3.txt', null],
  ['0m.txt', null],
  ['left.txt', null],
])('%s was taken from %s m', (fileName, distanceM) => {
  expect(guessCurve(fileName, DRIVERS).distanceM).toBe(distanceM);
});

import { describe, expect, it } from 'vitest';
import { plainMount } from '../../../../../src/core/document/plain.ts';
import { newDriver } from '../../../../../src/core/document/start/newDriver.ts';
import { newWay } from '../../../../../src/core/document/start/newWay.ts';
import { edited, refusedFor, wiring } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('add-way', () => {
  const driver = newDriver('mid', 'mid');
  const mount = { chamberId: 'main', ...plainMount, xM: 0.02, yM: 0.2, acousticCentreZM: -0.01 };

  it('adds driver, speaker on the first amplifier, and its place', () => {
    const after = edited(twoWay, { type: 'add-way', driver, mount });
    expect(wiring(after).at(-1)).toBe('LS3 in 0');
    expect(after.drivers.at(-1)).toBe(driver);
    expect(after.enclosure.mounts.at(-1)).toEqual({ ...mount, partId: 'LS3' });
  });

  it('uses a driver that is there already', () => {
    const after = edited(twoWay, { type: 'add-way', driver: twoWay.drivers[0]!, mount });
    expect(after.drivers).toBe(twoWay.drivers);
    expect(after.network.parts.at(-1)).toMatchObject({ id: 'LS3', driverId: 'woofer' });
  });

  it('finds a free place for a new way by itself', () => {
    const after = edited(twoWay, newWay(twoWay, 'tweeter'));
    expect(after.enclosure.mounts.at(-1)).toMatchObject({ partId: 'LS3', chamberId: null, xM: 0 });
    expect(after.drivers.at(-1)).toMatchObject({ id: 'driver-1', role: 'tweeter' });
  });

  it('refuses a place off the front, an unknown chamber, a bad driver and an id that is taken', () => {
    const outside = { ...mount, yM: 0.41 };
    expect(refusedFor(twoWay, { type: 'add-way', driver, mount: outside })).toEqual(['off-the-front']);
    const nowhere = { ...mount, chamberId: 'x' };
    expect(refusedFor(twoWay, { type: 'add-way', driver, mount: nowhere })).toEqual(['mount-without-chamber']);
    const bad = { ...driver, entered: { ...driver.entered, fsHz: 0 } };
    expect(refusedFor(twoWay, { type: 'add-way', driver: bad, mount })).toEqual(['too-small']);
    expect(refusedFor(twoWay, { type: 'add-way', driver: { ...driver, id: 'woofer' }, mount })).toEqual([
      'duplicate-id',
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import { designOf } from '../../../../../src/core/document/design.ts';
import { plainMount } from '../../../../../src/core/document/plain.ts';
import { edited, refusedFor } from '../../edits.ts';
import { twoWay } from '../../twoWay.ts';

describe('kept states', () => {
  const kept = edited(twoWay, { type: 'keep-state', name: 'before' });

  it('share everything with the document of their moment', () => {
    const [state] = kept.snapshots;
    expect(state).toMatchObject({ id: 'state-1', name: 'before' });
    for (const [key, value] of Object.entries(designOf(twoWay))) expect(state![key as 'air'], key).toBe(value);
  });

  it('become the present again, and stay kept', () => {
    const changed = edited(
      kept,
      { type: 'set-part', partId: 'C1', changes: { farad: 33e-6 } },
      { type: 'set-enclosure', changes: { widthM: 0.25 } },
      { type: 'set-name', name: 'Later' },
    );
    const back = edited(changed, { type: 'return-to-state', id: 'state-1' });
    expect(back).toEqual({ ...kept, name: 'Later' });
    expect(back.network).toBe(twoWay.network);
  });

  it('keep drivers of the present that own curves', () => {
    const driver = { ...twoWay.drivers[1]!, id: 'mid', name: 'Mid' };
    const mount = { chamberId: null, ...plainMount, xM: 0, yM: 0.2, acousticCentreZM: 0 };
    const curve = { ...twoWay.curves[1]!, id: 'c9', belongsTo: { kind: 'driver', driverId: 'mid' } as const };
    const added = edited(kept, { type: 'add-way', driver, mount }, { type: 'add-curve', curve });
    const back = edited(added, { type: 'return-to-state', id: 'state-1' });
    expect(back.drivers).toEqual([...twoWay.drivers, driver]);
    expect(back.network).toBe(twoWay.network);
  });

  it('are dropped, with curves of drivers that only they had', () => {
    expect(edited(kept, { type: 'drop-state', id: 'state-1' })).toEqual(twoWay);
    const gone = edited(kept, { type: 'remove-way', speakerId: 'LS2' });
    expect(gone.curves).toBe(twoWay.curves);
    expect(edited(gone, { type: 'drop-state', id: 'state-1' }).curves.map(({ id }) => id)).toEqual(['c1', 'c3']);
  });

  it('are two at most, and refused when they are not there or have no name', () => {
    const two = edited(kept, { type: 'keep-state', name: 'after' });
    expect(two.snapshots.map(({ id }) => id)).toEqual(['state-1', 'state-2']);
    expect(refusedFor(two, { type: 'keep-state', name: 'third' })).toEqual(['two-states']);
    expect(refusedFor(kept, { type: 'keep-state', name: 'x'.repeat(121) })).toEqual(['too-long']);
    expect(refusedFor(kept, { type: 'drop-state', id: 'state-2' })).toEqual(['unknown-state']);
    expect(refusedFor(kept, { type: 'return-to-state', id: 'state-2' })).toEqual(['unknown-state']);
  });

  it('give a freed name to the next one', () => {
    const two = edited(kept, { type: 'keep-state', name: 'after' }, { type: 'drop-state', id: 'state-1' });
    expect(edited(two, { type: 'keep-state', name: 'new' }).snapshots.map(({ id }) => id)).toEqual([
      'state-2',
      'state-1',
    ]);
  });
});

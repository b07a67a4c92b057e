import { describe, expect, it } from 'vitest';
import type { Driver, Project } from '../../../../src/core/document/schema.ts';
import { newDriver } from '../../../../src/core/document/start/newDriver.ts';
import { newProject } from '../../../../src/core/document/start/newProject.ts';
import { newWayInChamber } from '../../../../src/core/document/start/newWayInChamber.ts';
import { orderedSpot } from '../../../../src/core/document/start/orderedSpot.ts';
import { wayOrder } from '../../../../src/core/document/wayOrder.ts';
import { edited } from '../edits.ts';

type Role = Driver['role'];
const MARGIN_M = 0.01;
const empty = newProject();
const tall: Project = { ...empty, enclosure: { ...empty.enclosure, heightM: 0.9 } };
const grown = (start: Project, ...roles: readonly Role[]): Project =>
  roles.reduce((project, role) => edited(project, newWayInChamber(project, role)), start);
const driverOf = ({ network, drivers }: Project, partId: string): Driver => {
  const part = network.parts.find((candidate) => candidate.id === partId);
  return drivers.find((driver) => part?.kind === 'speaker' && driver.id === part.driverId)!;
};
const rolesFromTop = (project: Project): Role[] => wayOrder(project).map((id) => driverOf(project, id).role);
const overlaps = (project: Project): string[] => {
  const seats = project.enclosure.mounts.map((mount) => ({
    ...mount,
    radiusM: driverOf(project, mount.partId).outerDiameterM / 2,
  }));
  return seats.flatMap((a, k) =>
    seats.slice(k + 1).flatMap((b) => {
      const apartM = Math.hypot(a.xM - b.xM, a.yM - b.yM) - a.radiusM - b.radiusM;
      return apartM < MARGIN_M - 1e-9 ? [`${a.partId} ${b.partId}`] : [];
    }),
  );
};

describe('the place of a new way', () => {
  it.each<[Role[], Role[]]>([
    [['tweeter'], ['tweeter', 'full-range']],
    [
      ['woofer', 'mid', 'tweeter'],
      ['tweeter', 'mid', 'woofer', 'full-range'],
    ],
    [
      ['tweeter', 'woofer'],
      ['tweeter', 'woofer', 'full-range'],
    ],
  ])('keeps the usual order on a high front: %j', (roles, expected) => {
    const project = grown(tall, ...roles);
    // The full-range driver of the empty project stays where it is: only its place among the new ones varies.
    expect(rolesFromTop(project).filter((role) => role !== 'full-range')).toEqual(
      expected.filter((role) => role !== 'full-range'),
    );
    expect(rolesFromTop(project)[0]).toBe('tweeter');
    expect(overlaps(project)).toEqual([]);
  });

  it('moves nothing in an empty project that gets a tweeter', () => {
    expect(newWayInChamber(empty, 'tweeter').type).toBe('add-way');
    expect(rolesFromTop(grown(empty, 'tweeter'))).toEqual(['tweeter', 'full-range']);
  });

  it('leaves a tweeter its room above a mid that comes first', () => {
    const withMid = grown(tall, 'mid');
    expect(orderedSpot(withMid, newDriver('tweeter', 't'))?.moves).toEqual([]);
  });

  it('moves what is in the way down, as one step, when a tweeter has no room above', () => {
    const high = edited(empty, { type: 'set-mount', partId: 'LS1', changes: { yM: 0.19 } });
    const command = newWayInChamber(high, 'tweeter');
    expect(command.type).toBe('together');
    const project = edited(high, command);
    expect(rolesFromTop(project)).toEqual(['tweeter', 'full-range']);
    expect(overlaps(project)).toEqual([]);
    // Tweeter of 100 mm at the top of 320 mm: 320 − 50 − 10; full-range of 120 mm 10 mm below its edge: 260 − 50 − 60 − 10.
    expect(project.enclosure.mounts.map(({ yM }) => yM)).toEqual([0.14, 0.26]);
  });

  it('keeps the order where nothing can make room, and says nothing where the order has no say', () => {
    const crowded = grown(empty, 'mid', 'tweeter');
    expect(rolesFromTop(crowded)[0]).toBe('tweeter');
    expect(orderedSpot(grown(empty, 'tweeter'), newDriver('tweeter', 't'))).toBeNull();
  });

  it('leaves ports of the front alone', () => {
    const port = {
      id: 'P1',
      chamberId: 'chamber-1',
      shape: { kind: 'round', diameterM: 0.06 },
      face: 'front',
      count: 1,
      xM: 0,
      yM: 0.28,
    } as Project['enclosure']['ports'][number];
    const ported = { ...empty, enclosure: { ...empty.enclosure, ports: [port] } };
    // The only free place above the full-range driver would lie over the port.
    const spot = orderedSpot(ported, newDriver('tweeter', 't'));
    expect(port.yM - spot!.yM).toBeCloseTo(0.03 + 0.05 + MARGIN_M, 2);
    expect(spot!.moves.map(({ partId }) => partId)).toEqual(['LS1']);
    expect(spot!.yM - spot!.moves[0]!.yM).toBeGreaterThanOrEqual(0.05 + 0.06 + MARGIN_M - 1e-9);
  });
});

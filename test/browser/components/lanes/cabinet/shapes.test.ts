import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cabinetOf, dividersOf } from '../../../../../src/core/build/document/index.ts';
import { clearDepthM, clearWidthM, sliceM2 } from '../../../../../src/core/document/insideSpace.ts';
import type { Enclosure } from '../../../../../src/core/document/schema.ts';
import { placeLabels } from '../../../../../src/ui/lanes/enclosure/drawing/labels/placeLabels.ts';
import { driverBody } from '../../../../../src/ui/lanes/enclosure/drawing/profile/driverBody.ts';
import { braceBoards } from '../../../../../src/ui/lanes/enclosure/drawing/shape/braceBoards.ts';
import { sectionOutline, sideOutline } from '../../../../../src/ui/lanes/enclosure/drawing/shape/cabinetOutline.ts';
import { driverSeat } from '../../../../../src/ui/lanes/enclosure/drawing/shape/driverSeat.ts';
import { lineFold } from '../../../../../src/ui/lanes/enclosure/drawing/shape/lineFold.ts';
import { portSeat } from '../../../../../src/ui/lanes/enclosure/drawing/shape/portSeat.ts';
import { radiatorPlaces } from '../../../../../src/ui/lanes/enclosure/drawing/shape/radiatorPlaces.ts';
import { partitions, sideChambers } from '../../../../../src/ui/lanes/enclosure/sideChambers.ts';
import { bandPass, demos, leaning, withRadiators } from './handMade.ts';

const seed = { seed: 20261125 };
const millimetres = (from: number, to: number) => fc.integer({ min: from, max: to }).map((mm) => mm / 1000);

test('the boards drawn are the boards cut, seed 20261125', () => {
  const chamber = demos.room.enclosure.chambers[0]!;
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          gap: millimetres(0, 80),
          tall: millimetres(50, 250),
        }),
        {
          minLength: 1,
          maxLength: 4,
        },
      ),
      fc.constantFrom(0, 6),
      (stack, frontLeanDeg) => {
        let floor = 0.018;
        const chambers = stack.map(({ gap, tall }, k) => {
          const bottomM = floor + gap;
          floor = bottomM + tall;
          return { ...chamber, id: `c${k}`, volume: { kind: 'geometry' as const, bottomM, topM: floor, depthM: null } };
        });
        const room = demos.room.enclosure;
        const enclosure: Enclosure = {
          ...room,
          chambers,
          heightM: 1.6,
          wood: { ...room.wood, frontLeanDeg: frontLeanDeg / 3 },
        };
        const cut = dividersOf(enclosure);
        if (!cut.ok) throw new Error(cut.problems[0]?.code);
        const drawn = partitions(enclosure).filter(({ bottomM, topM }) => topM - bottomM > 1e-9);
        const at = (list: readonly (readonly [number, number])[]) => [...list].sort((a, b) => a[0] - b[0]).flat();
        const expected = at(cut.value.map(({ atM, thicknessM }) => [Math.max(atM, 0.018), atM + thicknessM] as const));
        const found = at(drawn.map(({ bottomM, topM }) => [bottomM, topM] as const));
        expect(found).toHaveLength(expected.length);
        for (const [i, place] of expected.entries()) expect(found[i]).toBeCloseTo(place, 9);
      },
    ),
    { ...seed, numRuns: 200 },
  );
});

test('drivers and braces are drawn as they are counted for the cut list', () => {
  for (const project of [demos.room, demos.shelf, leaning]) {
    const read = cabinetOf(project);
    if (!read.ok) throw new Error(read.problems[0]?.code);
    const { cabinet } = read.value;
    for (const counted of cabinet.drivers) {
      const part = project.network.parts.find(({ id }) => id === counted.id);
      const driver = project.drivers.find(({ id }) => part?.kind === 'speaker' && id === part.driverId)!;
      const drawn = driverBody(driver, 0.018);
      expect(2 * drawn.sections[0]!.radiusM).toBeCloseTo(counted.cutOutDiameterM, 9);
      expect(2 * drawn.magnet.radiusM).toBeCloseTo(counted.magnetDiameterM, 9);
      expect(drawn.magnet.toM).toBeCloseTo(counted.recessDepthM + counted.depthM, 9);
    }
    const boards = braceBoards(project.enclosure);
    expect(boards).toHaveLength(cabinet.braces.length);
    for (const [k, { atM, thicknessM, windowsM }] of cabinet.braces.entries()) {
      const { lies, wood, window } = boards[k]!;
      const thick = { level: wood.upM, across: wood.behindM.map((m) => -m).reverse(), lengthwise: wood.acrossM }[lies];
      expect(thick[0]).toBeCloseTo(atM, 9);
      expect(thick[1]).toBeCloseTo(atM + thicknessM, 9);
      expect(window === null).toBe(windowsM.length === 0);
      const x = windowsM[0]?.x;
      if (x && window) expect(window.acrossM[1]).toBeCloseTo(x[1], 9);
    }
  }
});

test('outlines of a leaning, narrowing cabinet have the inside that is computed', () => {
  const { enclosure } = leaning;
  const { inner, outer } = sideOutline(enclosure);
  expect(outer[1]!.behindM).toBeCloseTo(enclosure.heightM * Math.tan((8 * Math.PI) / 180), 9);
  for (const k of [0, 1] as const) {
    const depth = inner[k === 0 ? 3 : 2]!.behindM - inner[k]!.behindM;
    expect(depth).toBeCloseTo(clearDepthM(enclosure, inner[k]!.otherM), 9);
  }
  const cut = sectionOutline(enclosure, 0.4).inner;
  expect(cut[3]!.otherM - cut[0]!.otherM).toBeCloseTo(clearWidthM(enclosure, cut[0]!.behindM), 9);
  // The same area, from the corners and from the formula that the volume is made of.
  const [near, far] = [cut[3]!.otherM - cut[0]!.otherM, cut[2]!.otherM - cut[1]!.otherM];
  const area = ((near + far) / 2) * (cut[1]!.behindM - cut[0]!.behindM);
  expect(area).toBeCloseTo(sliceM2(enclosure, 0.4, null), 9);
});

test('stated chambers are drawn at their size, none over another, and squeezed where they exceed the cabinet', () => {
  const stated = (litres: readonly number[]): Enclosure => ({
    ...bandPass.enclosure,
    chambers: bandPass.enclosure.chambers.map((chamber, k) => ({
      ...chamber,
      volume: { kind: 'stated', grossM3: litres[k]! / 1000 },
    })),
  });
  const fits = stated([8, 12]);
  const [rear, fore] = sideChambers(fits);
  expect(fore!.bottomM).toBeGreaterThanOrEqual(rear!.topM - 1e-12);
  expect((rear!.topM - rear!.bottomM) * sliceM2(fits, rear!.bottomM, null)).toBeCloseTo(0.008, 9);
  expect(rear!.squeezed).toBe(false);
  const full = sideChambers(stated([40, 60]));
  expect(full[1]!.topM - full[0]!.bottomM).toBeCloseTo(0.5 - 0.036, 9);
  expect(full.every(({ squeezed }) => squeezed)).toBe(true);
});

test('a cone between two chambers sits on their board, its front to the front chamber', () => {
  const mount = bandPass.enclosure.mounts[0]!;
  expect(driverSeat(mount, bandPass.enclosure)).toMatchObject({
    kind: 'board',
    upM: 0.218,
    faces: 'up',
    isPlaced: true,
  });
  const turned = { ...mount, chamberId: 'fore', frontChamberId: 'rear' };
  expect(driverSeat(turned, bandPass.enclosure)).toMatchObject({ upM: 0.2, faces: 'down' });
  expect(driverSeat({ ...mount, frontChamberId: null }, bandPass.enclosure)).toEqual({ kind: 'front' });
  const inner = { ...bandPass.enclosure.ports[0]!, toChamberId: 'rear' };
  expect(portSeat(inner, bandPass.enclosure)).toMatchObject({ upM: 0.2, towards: 'up' });
});

test('equal radiators lie side by side where they fit, else above one another', () => {
  const pair = withRadiators.enclosure.passiveRadiators[1]!;
  const narrow = radiatorPlaces(pair, withRadiators.enclosure);
  expect(new Set(narrow.map(({ xM }) => xM)).size).toBe(1);
  const wide = radiatorPlaces(pair, { widthM: 0.4 });
  expect(wide[1]!.xM - wide[0]!.xM).toBeGreaterThanOrEqual(pair.outerDiameterM);
  expect(new Set(wide.map(({ yM }) => yM)).size).toBe(1);
});

test('a line is straight where it fits and folded where it does not, within its room', () => {
  const room = { leftPx: 10, topPx: 20, widthPx: 90, heightPx: 200 };
  expect(lineFold(0.5, 300, room).runs).toBe(1);
  const folded = lineFold(1.5, 300, room);
  expect(folded.runs).toBe(3);
  for (const [x, y] of folded.points) {
    expect(x).toBeGreaterThan(10);
    expect(x).toBeLessThan(100);
    expect(y).toBeGreaterThan(20);
    expect(y).toBeLessThan(220);
  }
});

test('labels never lie over one another unless they must be there, seed 20261125', () => {
  const place = fc.integer({ min: 0, max: 200 });
  const box = fc.record({
    leftPx: place,
    topPx: place,
    widthPx: fc.integer({ min: 5, max: 60 }),
    heightPx: fc.constant(14),
  });
  fc.assert(
    fc.property(
      fc.array(fc.array(box, { minLength: 1, maxLength: 4 }), { maxLength: 12 }),
      fc.array(box, { maxLength: 3 }),
      (lists, taken) => {
        const wishes = lists.map((boxes, k) => ({ key: `${k}`, options: boxes.map((one) => ({ box: one })) }));
        const placed = [...placeLabels(wishes, taken).values()].map(({ box: one }) => one);
        placed.forEach((a, i) => {
          for (const b of [...placed.slice(i + 1), ...taken]) {
            const x = Math.min(a.leftPx + a.widthPx, b.leftPx + b.widthPx) - Math.max(a.leftPx, b.leftPx);
            const y = Math.min(a.topPx + a.heightPx, b.topPx + b.heightPx) - Math.max(a.topPx, b.topPx);
            expect(Math.min(x, y)).toBeLessThanOrEqual(0);
          }
        });
        if (lists.length > 0 && taken.length === 0) expect(placed.length).toBeGreaterThan(0);
      },
    ),
    { ...seed, numRuns: 200 },
  );
});

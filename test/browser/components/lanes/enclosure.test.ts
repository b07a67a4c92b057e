import { expect, test } from 'vitest';
import { applyCommand } from '../../../../src/core/document/applyCommand.ts';
import type { Command } from '../../../../src/core/document/command.ts';
import type { Project } from '../../../../src/core/document/schema.ts';
import { cabinetDrawing, onFront, onSide } from '../../../../src/ui/lanes/enclosure/drawing/cabinetDrawing.ts';
import { keepOnBaffle } from '../../../../src/ui/lanes/enclosure/keepOnBaffle.ts';
import { openingCentresM, portFootprint } from '../../../../src/ui/lanes/enclosure/portFaces.ts';
import { partitions, sideChambers } from '../../../../src/ui/lanes/enclosure/sideChambers.ts';
import { demo } from '../plots/openWorkbench.tsx';

const after = (project: Project, command: Command): Project => {
  const applied = applyCommand(project, command);
  if (!applied.ok) throw new Error(JSON.stringify(applied.problems));
  return applied.value;
};
const port = demo.enclosure.ports[0]!;
const mid = demo.enclosure.chambers.find((chamber) => chamber.id === 'middle')!;

test('what is moved stays on the baffle, on whole millimetres where it can', () => {
  const baffle = { widthM: 0.27, heightM: 0.94 };
  for (let xM = -0.5; xM <= 0.5; xM += 0.0713) {
    for (let yM = -0.5; yM <= 1.5; yM += 0.0917) {
      for (const [halfWidthM, halfHeightM] of [
        [0.111, 0.111],
        [0.1, 0.012],
        [0.0055, 0.0055],
      ] as const) {
        const kept = keepOnBaffle({ xM, yM }, { halfWidthM, halfHeightM }, baffle);
        expect(Math.abs(kept.xM) + halfWidthM).toBeLessThanOrEqual(baffle.widthM / 2 + 1e-9);
        expect(kept.yM - halfHeightM).toBeGreaterThanOrEqual(-1e-9);
        expect(kept.yM + halfHeightM).toBeLessThanOrEqual(baffle.heightM + 1e-9);
      }
    }
  }
  expect(keepOnBaffle({ xM: 0.0123, yM: 0.5006 }, { halfWidthM: 0.05, halfHeightM: 0.05 }, demo.enclosure)).toEqual({
    xM: 0.012,
    yM: 0.501,
  });
  // Wider than the baffle: in its middle.
  expect(keepOnBaffle({ xM: 0.1, yM: 0.5 }, { halfWidthM: 0.2, halfHeightM: 0.05 }, demo.enclosure).xM).toBe(0);
});

test('both views are at one scale and fit the space', () => {
  const drawing = cabinetDrawing({ widthM: 0.27, heightM: 0.94, depthM: 0.34 }, 480, 460);
  const side = drawing.side!;
  expect(drawing.front.widthPx / 0.27).toBeCloseTo(side.widthPx / 0.34, 9);
  expect(side.leftPx + side.widthPx).toBeLessThanOrEqual(480);
  expect(drawing.heightPx).toBeLessThanOrEqual(460);
  expect(onFront(drawing, 0, 0.94).yPx).toBeCloseTo(drawing.front.topPx, 9);
  expect(onSide({ side, pxPerM: drawing.pxPerM }, 0.34, 0).xPx).toBeCloseTo(side.leftPx + side.widthPx, 9);
});

test('chambers lie where their bounds say, with walls between them', () => {
  const low = sideChambers(demo.enclosure).find(({ id }) => id === 'low')!;
  expect([low.bottomM, low.topM, low.stated]).toEqual([0.018, 0.657, false]);
  const walls = partitions(demo.enclosure);
  // The shelf over the woofer chamber is the floor of the mid chamber: one wall, one panel thick.
  const shelves = walls.filter((wall) => Math.abs(wall.bottomM - 0.657) < 0.002);
  expect(shelves).toHaveLength(1);
  expect(shelves[0]!.topM - shelves[0]!.bottomM).toBeCloseTo(demo.enclosure.panelM, 6);
});

test('a stated volume is drawn as a slice of that size at its driver', () => {
  const stated = after(demo, {
    type: 'set-chamber',
    id: mid.id,
    changes: { volume: { kind: 'stated', grossM3: 0.005 } },
  });
  const slice = sideChambers(stated.enclosure).find(({ id }) => id === mid.id)!;
  const { widthM, depthM, panelM } = stated.enclosure;
  const volume = (slice.topM - slice.bottomM) * (widthM - 2 * panelM) * (depthM - 2 * panelM);
  expect(slice.stated).toBe(true);
  expect(volume).toBeCloseTo(0.005, 9);
  const mount = stated.enclosure.mounts.find(({ chamberId }) => chamberId === mid.id)!;
  expect(mount.yM).toBeGreaterThan(slice.bottomM);
  expect(mount.yM).toBeLessThan(slice.topM);
});

test('equal ports stand side by side about their common centre', () => {
  const three = { ...port, count: 3, xM: 0.01, shape: { kind: 'round', diameterM: 0.05 } } as const;
  const centres = openingCentresM(three);
  expect(centres).toHaveLength(3);
  expect(centres.reduce((a, b) => a + b, 0) / 3).toBeCloseTo(0.01, 9);
  expect(portFootprint(three).halfWidthM).toBeCloseTo(centres[2]! - 0.01 + 0.025, 9);
});

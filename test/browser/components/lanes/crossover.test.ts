import { expect, test } from 'vitest';
import type { Part } from '../../../../src/core/circuit/part.ts';
import { problem } from '../../../../src/core/messages/problem.ts';
import { drawSchematic } from '../../../../src/core/schematic/drawSchematic.ts';
import { litPlaces } from '../../../../src/ui/lanes/crossover/litPlaces.ts';
import { newPart, PASSIVE_KINDS } from '../../../../src/ui/lanes/crossover/newParts.ts';
import { nodeLabel } from '../../../../src/ui/lanes/crossover/nodeLabel.ts';
import { nodesInOrder } from '../../../../src/ui/lanes/crossover/nodesInOrder.ts';
import { partHandle } from '../../../../src/ui/lanes/crossover/partHandle.ts';
import { partName } from '../../../../src/ui/lanes/crossover/partNames.ts';
import { partsList } from '../../../../src/ui/lanes/crossover/partsList.ts';
import { readingOrder } from '../../../../src/ui/lanes/crossover/readingOrder.ts';
import { roundedSection } from '../../../../src/ui/lanes/crossover/sections/roundedSection.ts';
import { SECTION_KINDS } from '../../../../src/ui/lanes/crossover/sections/sectionKinds.ts';
import { rowUnit } from '../../../../src/ui/lanes/drawingUnit.ts';
import { laneScale } from '../../../../src/ui/lanes/laneScale.ts';
import { demo } from '../plots/openWorkbench.tsx';

const { parts } = demo.network;
const plan = drawSchematic(parts, ['LS3', 'LS2', 'LS1']);
const C5 = parts.find((part) => part.id === 'C5')!;

test('a part is called by name, value and nodes; node 0 is the return', () => {
  expect(partName(C5, demo.drivers, 'metric')).toMatch(/^C5, [\d.]+ µF, from hi to t1$/);
  const LS2 = parts.find((part) => part.id === 'LS2')!;
  expect(partName(LS2, demo.drivers, 'metric')).toMatch(/^LS2, 110 mm cone mid, plus at \w+, minus at \w+$/);
});

test('every part is read once, what is shared first, then lane by lane from the left', () => {
  const order = readingOrder(plan).map((placed) => placed.partId);
  expect([...order].sort()).toEqual(parts.map((part) => part.id).sort());
  expect(order.indexOf('V1')).toBeLessThan(order.indexOf('C5'));
  expect(order.indexOf('C5')).toBeLessThan(order.indexOf('LS3'));
  expect(order.indexOf('LS3')).toBeLessThan(order.indexOf('L1'));
});

test('the gravest word about a part or node marks it; notes mark nothing', () => {
  const at = (kind: 'part' | 'node', id: string) => problem('circuit.floating-node', { kind, id });
  const lit = litPlaces(
    [at('node', 't1')],
    [
      { ...at('part', 'C5'), severity: 'warning' },
      { ...at('part', 'C5'), severity: 'danger' },
      { ...at('part', 'L4'), severity: 'note' },
    ],
  );
  expect(lit.nodes.get('t1')).toBe('fault');
  expect(lit.parts.get('C5')).toBe('danger');
  expect(lit.parts.has('L4')).toBe(false);
});

test('handles and values of neighbours can be hit apart at every size of the drawing', () => {
  for (const unitPx of [11, 12, 14]) {
    const scale = laneScale(
      plan.lanes,
      plan.height,
      rowUnit(unitPx),
      () => 0,
      () => 0,
    );
    const view = { unitPx, scale, topPx: 0, heightPx: scale.heightPx, leftPx: 0 };
    const boxes = plan.parts.map((placed) => partHandle(placed, view));
    for (const [k, a] of boxes.entries()) {
      expect(Math.min(a.widthPx, a.heightPx)).toBeGreaterThanOrEqual(24);
      for (const b of boxes.slice(k + 1)) {
        const across = Math.min(a.leftPx + a.widthPx, b.leftPx + b.widthPx) - Math.max(a.leftPx, b.leftPx);
        const down = Math.min(a.topPx + a.heightPx, b.topPx + b.heightPx) - Math.max(a.topPx, b.topPx);
        expect(Math.min(across, down)).toBeLessThanOrEqual(1e-6);
      }
    }
  }
});

test('every node has one place for its name', () => {
  for (const node of nodesInOrder(parts)) {
    const label = nodeLabel(plan, node);
    expect(label, node).not.toBeNull();
    expect(label!.x).toBeGreaterThanOrEqual(0);
    expect(label!.x).toBeLessThanOrEqual(plan.width);
  }
  expect(nodesInOrder(parts).at(-1)).toBe('0');
});

test('the parts list has a line for each part that is bought, in columns', () => {
  const lines = partsList(parts, demo.drivers, 'metric').split('\n');
  expect(lines).toHaveLength(1 + parts.filter((part) => part.kind !== 'amplifier').length);
  expect(new Set(lines.map((line) => line.split('\t').length))).toEqual(new Set([6]));
  const coil = lines.find((line) => line.startsWith('L1\t'))!;
  expect(coil).toContain('mH');
  expect(coil).toContain('core tan δ');
  const noted = partsList([{ ...C5, note: 'a\tb\nc' }], [], 'metric');
  expect(noted.split('\n')[1]?.split('\t')).toHaveLength(6);
});

test('new parts have the values of their kind', () => {
  for (const kind of PASSIVE_KINDS) {
    for (const place of ['series', 'across'] as const) expect(newPart(kind, place).kind).toBe(kind);
  }
});

test.each(SECTION_KINDS)(
  'the section "$words" begins with numbers that make it, with source and assumptions',
  (kind) => {
    for (const driver of demo.drivers) {
      const numbers = Object.fromEntries(kind.numbers.map(({ key, start }) => [key, start(driver)]));
      const made = kind.make(numbers, { family: 'linkwitz-riley', order: 2 });
      if (!made.ok) throw new Error(JSON.stringify(made.problems));
      expect(made.value.parts.length).toBeGreaterThan(1);
      expect(made.value.source.length).toBeGreaterThan(10);
      expect(made.value.assumes.length).toBeGreaterThan(10);
    }
  },
);

test('an 8 ohm Linkwitz–Riley low-pass at 2.5 kHz has its textbook values', () => {
  const made = SECTION_KINDS[0]!.make({ cornerHz: 2500, loadOhm: 8 }, { family: 'linkwitz-riley', order: 2 });
  if (!made.ok) throw new Error('no section');
  const [coil, capacitor] = made.value.parts as readonly [Part, Part];
  // L = R/(π f), C = 1/(4 π f R): two coinciding real poles (S. H. Linkwitz, JAES 24 (1), 1976).
  expect(coil.kind === 'inductor' && coil.henry).toBeCloseTo(8 / (Math.PI * 2500), 9);
  expect(capacitor.kind === 'capacitor' && capacitor.farad).toBeCloseTo(1 / (4 * Math.PI * 2500 * 8), 12);
  const rounded = roundedSection(made.value.parts, 'E12');
  expect(
    rounded.map((part) => (part.kind === 'inductor' ? part.henry : part.kind === 'capacitor' && part.farad)),
  ).toEqual([1e-3, 3.9e-6]);
});

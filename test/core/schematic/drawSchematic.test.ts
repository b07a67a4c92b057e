import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circuitView } from '../../../src/core/schematic/circuitView.ts';
import { compose } from '../../../src/core/schematic/compose.ts';
import { drawSchematic, type PlacedPart, type SchematicPlan } from '../../../src/core/schematic/index.ts';
import { layOut } from '../../../src/core/schematic/layOut.ts';
import { wireUp } from '../../../src/core/schematic/wireUp.ts';
import { anyParts } from './anyParts.ts';
import {
  biWiredThreeWay,
  broken,
  circuits,
  fourWay,
  midTweeterMid,
  returnParts,
  sealedTwoWay,
  seriesTwoWay,
  sixParts,
  twoChannels,
} from './circuits.ts';
import { crossingsOf, faultsOf } from './faultsOf.ts';
import { partsFrom } from './partsFrom.ts';

const partIn = (plan: SchematicPlan, id: string): PlacedPart => plan.parts.find(({ partId }) => partId === id)!;
const xs = (plan: SchematicPlan, ...ids: string[]): number[] => ids.map((id) => partIn(plan, id).centre.x);
const ys = (plan: SchematicPlan, ...ids: string[]): number[] => ids.map((id) => partIn(plan, id).centre.y);
const isAscending = (values: readonly number[]): boolean => values.every((v, k) => k === 0 || v > values[k - 1]!);

describe('drawing of a known circuit', () => {
  for (const { title, parts, order, crossings } of circuits) {
    it(`${title}: every part once, every node joined, nothing on anything else, ${crossings} crossings`, () => {
      const plan = drawSchematic(parts, order);
      expect(faultsOf(parts, plan)).toEqual([]);
      expect(crossingsOf(plan)).toBe(crossings);
      expect(plan.lanes.filter((lane) => lane.kind === 'way').map((lane) => lane.partId)).toEqual(order);
    });
  }
});

describe('free space', () => {
  it('is enough at the first attempt for every known circuit', () => {
    for (const { title, parts, order } of circuits) {
      const view = circuitView(parts);
      const plan = wireUp(parts, layOut(view, compose(view, order), 0));
      expect({ title, plan }).toEqual({ title, plan: drawSchematic(parts, order) });
    }
  });
});

describe('how a way is drawn', () => {
  it('series parts lie on one rail from left to right, legs hang from it in their order, the speaker stands at the end', () => {
    const { parts, order } = biWiredThreeWay;
    const plan = drawSchematic(parts, order);
    const rail = ['C3', 'L3', 'R3'];
    expect(new Set(ys(plan, ...rail)).size).toBe(1);
    expect(isAscending(xs(plan, 'C3', 'L2', 'L3', 'C4', 'R4', 'R3', 'LS2'))).toBe(true);
    for (const id of rail) expect(partIn(plan, id).orientation).toBe('horizontal');
    for (const id of ['L2', 'C4', 'R4', 'LS2']) expect(partIn(plan, id).orientation).toBe('vertical');
  });

  it('a series notch is one upright stack', () => {
    const plan = drawSchematic(biWiredThreeWay.parts, biWiredThreeWay.order);
    expect(new Set(xs(plan, 'R4', 'L4', 'C5')).size).toBe(1);
    expect(isAscending(ys(plan, 'R4', 'L4', 'C5'))).toBe(true);
  });

  it('a parallel trap is a bridge over the main row', () => {
    const plan = drawSchematic(fourWay.parts, fourWay.order);
    expect(new Set(xs(plan, 'L7', 'R6', 'C9')).size).toBe(1);
    expect(isAscending(ys(plan, 'C9', 'R6', 'L7'))).toBe(true);
    expect(partIn(plan, 'L7').centre.y).toBe(partIn(plan, 'L6').centre.y);
  });

  it('a reversed speaker has its plus at the return rail', () => {
    const plan = drawSchematic(biWiredThreeWay.parts, biWiredThreeWay.order);
    const [plus, minus] = partIn(plan, 'LS2').pins;
    expect(plus.y).toBeGreaterThan(minus.y);
    const [above, below] = partIn(plan, 'LS1').pins;
    expect(above.y).toBeLessThan(below.y);
  });

  it('parts in the return stand on rails of their own, in the order of the current', () => {
    const plan = drawSchematic(returnParts.parts, returnParts.order);
    expect(isAscending(xs(plan, 'R2', 'L4', 'LS1'))).toBe(true);
    expect(isAscending(ys(plan, 'R1', 'C4', 'R2'))).toBe(true);
    expect(new Set(xs(plan, 'C4', 'R2')).size).toBe(1);
  });

  it('columns of a short way are spread over the whole lane', () => {
    const plan = drawSchematic(fourWay.parts, fourWay.order);
    const [c1, c2, r1, speaker] = xs(plan, 'C1', 'C2', 'R1', 'LS1') as [number, number, number, number];
    const length = speaker - plan.trunkWidth;
    expect(c1 - plan.trunkWidth).toBeLessThan(0.25 * length);
    expect(c2 - plan.trunkWidth).toBeGreaterThan(0.3 * length);
    expect(r1 - plan.trunkWidth).toBeGreaterThan(0.55 * length);
  });

  it('a simple way takes nine units of height, one with a stack of three at least sixteen', () => {
    const plan = drawSchematic(sixParts.parts, sixParts.order);
    expect(plan.lanes[0]!.bottom - plan.lanes[0]!.top).toBeLessThanOrEqual(9.5);
    const notched = drawSchematic(biWiredThreeWay.parts, biWiredThreeWay.order);
    expect(notched.lanes[1]!.bottom - notched.lanes[1]!.top).toBeGreaterThanOrEqual(16);
  });
});

describe('what ways share', () => {
  it('amplifier, terminal jumpers and shared parts stand left of the lanes', () => {
    for (const { parts, order, ids } of [
      { ...biWiredThreeWay, ids: ['A1', 'J1', 'J2'] },
      { ...midTweeterMid, ids: ['A1', 'R9', 'R8', 'L8', 'C8', 'L1', 'C1', 'R1', 'C2'] },
      { ...twoChannels, ids: ['A1', 'A2'] },
    ]) {
      const plan = drawSchematic(parts, order);
      for (const id of ids) {
        expect(partIn(plan, id).centre.x).toBeLessThan(plan.trunkWidth);
        expect(plan.lanes[partIn(plan, id).lane]!.kind).toBe('shared');
      }
    }
  });

  it('speakers of a series crossover follow each other down', () => {
    const plan = drawSchematic(seriesTwoWay.parts, seriesTwoWay.order);
    const [upper, lower] = [partIn(plan, 'LS1'), partIn(plan, 'LS2')];
    const mid = plan.wires.filter((wire) => wire.node === 'mid').flatMap((wire) => wire.points);
    expect(mid).toContainEqual({ x: plan.speakerX, y: upper.pins[1].y });
    expect(mid).toContainEqual({ x: plan.speakerX, y: lower.pins[0].y });
  });

  it('what hangs on nothing stands in the loose lane at the bottom, open and shorted speakers keep their lanes', () => {
    const plan = drawSchematic(broken.parts, broken.order);
    const loose = plan.lanes.at(-1)!;
    expect(loose.kind).toBe('loose');
    for (const id of ['R3', 'R4', 'C4', 'L4', 'R5']) expect(partIn(plan, id).centre.y).toBeGreaterThan(loose.top);
    expect(loose.top).toBeGreaterThanOrEqual(plan.lanes[2]!.bottom);
    const shorted = partsFrom('A1 in 0\nLS1 in 0\nLS2 in in');
    expect(faultsOf(shorted, drawSchematic(shorted, ['LS2', 'LS1']))).toEqual([]);
  });
});

describe('drawing of anything', () => {
  it('an empty list is an empty drawing', () => {
    expect(drawSchematic([], [])).toMatchObject({ parts: [], wires: [], dots: [], lanes: [] });
  });

  it('takes an order that names no speaker, or one twice, or not all', () => {
    const { parts } = sealedTwoWay;
    const plan = drawSchematic(parts, ['nobody', 'LS2', 'LS2', 'C1']);
    expect(plan.lanes.filter((lane) => lane.kind === 'way').map((lane) => lane.partId)).toEqual(['LS2', 'LS1']);
    expect(faultsOf(parts, plan)).toEqual([]);
  });

  it('the same circuit gives the same drawing', () => {
    for (const { parts, order } of circuits) expect(drawSchematic(parts, order)).toEqual(drawSchematic(parts, order));
  });

  it('draws any list of up to 14 parts without a fault (seed 20250611)', () => {
    fc.assert(
      fc.property(anyParts(14), (parts) => {
        expect(faultsOf(parts, drawSchematic(parts, []))).toEqual([]);
      }),
      { seed: 20250611, numRuns: 300 },
    );
  });

  it('draws any list of up to 60 parts without a fault (seed 20250612)', () => {
    fc.assert(
      fc.property(anyParts(60), (parts) => {
        expect(faultsOf(parts, drawSchematic(parts, []))).toEqual([]);
      }),
      { seed: 20250612, numRuns: 25 },
    );
  });
});

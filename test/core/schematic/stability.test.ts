import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawSchematic, type PlacedPart, type SchematicPlan } from '../../../src/core/schematic/index.ts';
import { edited } from './anyParts.ts';
import { biWiredThreeWay, circuits, sealedTwoWay } from './circuits.ts';
import { faultsOf } from './faultsOf.ts';
import { partFrom, partsFrom } from './partsFrom.ts';

const laneOf = (plan: SchematicPlan, part: PlacedPart): string => {
  const { kind, partId } = plan.lanes[part.lane]!;
  return `${kind} ${partId}`;
};

/** Pairs that stood in one order in a lane and now stand in the other: legs and speakers by column, rails by place in the row. */
function flipsBetween(before: SchematicPlan, after: SchematicPlan): string[] {
  const now = new Map(after.parts.map((part) => [part.partId, part]));
  const moved = before.parts.flatMap((was) => {
    const is = now.get(was.partId);
    const isComparable =
      is !== undefined &&
      is.orientation === was.orientation &&
      laneOf(before, was) === laneOf(after, is) &&
      !laneOf(after, is).startsWith('loose') &&
      !before.links.includes(was.partId) &&
      !after.links.includes(was.partId);
    return isComparable ? [{ was, is }] : [];
  });
  return moved.flatMap((a) =>
    moved
      .filter((b) => {
        if (laneOf(before, a.was) !== laneOf(before, b.was) || a.was.orientation !== b.was.orientation) return false;
        const isOneRow = a.was.centre.y === b.was.centre.y && a.is.centre.y === b.is.centre.y;
        if (a.was.orientation === 'horizontal' && !isOneRow) return false;
        return a.was.centre.x < b.was.centre.x && a.is.centre.x > b.is.centre.x;
      })
      .map((b) => `${a.was.partId} and ${b.was.partId}`),
  );
}

const die = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
const dice = fc.tuple(die, die, die, die);

describe('a drawing after an edit', () => {
  it('one edit of a known circuit flips no two columns and leaves no fault (seed 20250613)', () => {
    fc.assert(
      fc.property(fc.constantFrom(...circuits), dice, ({ parts, order }, rolls) => {
        const before = drawSchematic(parts, order);
        const edit = edited(parts, '99', rolls);
        const after = drawSchematic(edit.parts, order, before);
        expect({ what: edit.what, flips: flipsBetween(before, after) }).toEqual({ what: edit.what, flips: [] });
        expect(faultsOf(edit.parts, after)).toEqual([]);
      }),
      { seed: 20250613, numRuns: 400 },
    );
  });

  it('ten edits in a row leave no fault (seed 20250614)', () => {
    fc.assert(
      fc.property(fc.constantFrom(...circuits), fc.array(dice, { minLength: 10, maxLength: 10 }), (start, rolls) => {
        let parts = [...start.parts];
        let plan = drawSchematic(parts, start.order);
        rolls.forEach((roll, step) => {
          if (parts.every((part) => part.kind === 'speaker' || part.kind === 'amplifier')) return;
          const edit = edited(parts, `9${step}`, roll);
          plan = drawSchematic(edit.parts, start.order, plan);
          parts = edit.parts;
          expect({ what: edit.what, faults: faultsOf(parts, plan) }).toEqual({ what: edit.what, faults: [] });
        });
      }),
      { seed: 20250614, numRuns: 40 },
    );
  });

  it('a drawing from itself is itself', () => {
    for (const { parts, order } of circuits) {
      const plan = drawSchematic(parts, order);
      expect(drawSchematic(parts, order, plan)).toEqual(plan);
    }
  });

  it('legs on one node keep their order whatever is put in their place', () => {
    const parts = partsFrom('A1 in 0\nL1 in a\nC1 a 0\nL2 a 0\nLS1 a 0');
    const before = drawSchematic(parts, ['LS1']);
    const swapped = parts.map((part) => (part.id === 'C1' ? { ...partFrom('R9 a 0'), id: 'C1' } : part));
    const more = [...swapped, partFrom('C2 a 0')];
    const after = drawSchematic(more, ['LS1'], before);
    const x = (id: string): number => after.parts.find((part) => part.partId === id)!.centre.x;
    expect(x('C1')).toBeLessThan(x('L2'));
  });

  it('a part taken out of the main path leaves its place open and the rest where it was', () => {
    const { parts, order } = sealedTwoWay;
    const before = drawSchematic(parts, order);
    const left = parts.filter((part) => part.id !== 'C1');
    const after = drawSchematic(left, order, before);
    expect(after.openings).toEqual([['in', 'a']]);
    const places = (plan: SchematicPlan): unknown =>
      plan.parts.filter((part) => part.partId !== 'C1').map(({ partId, centre }) => ({ partId, centre }));
    expect(places(after)).toEqual(places(before));
    expect(drawSchematic(left, order, after).openings).toEqual([['in', 'a']]);
    expect(drawSchematic(parts, order, after).openings).toEqual([]);
  });

  it('a notch without its coil stays one stack', () => {
    const { parts, order } = biWiredThreeWay;
    const before = drawSchematic(parts, order);
    const after = drawSchematic(
      parts.filter((part) => part.id !== 'L4'),
      order,
      before,
    );
    const at = (id: string) => after.parts.find((part) => part.partId === id)!.centre;
    expect(at('C5').x).toBe(at('R4').x);
    expect(at('C5').y).toBeGreaterThan(at('R4').y);
  });

  it('a bridging part that an edit brings becomes the link, not what stood there', () => {
    const { parts, order } = sealedTwoWay;
    const before = drawSchematic(parts, order);
    const after = drawSchematic([partFrom('R99 a c'), ...parts], order, before);
    expect(after.links).toEqual(['R99']);
    expect(flipsBetween(before, after)).toEqual([]);
  });
});

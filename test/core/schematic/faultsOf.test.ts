import { describe, expect, it } from 'vitest';
import { drawSchematic, type SchematicPlan } from '../../../src/core/schematic/index.ts';
import { sealedTwoWay } from './circuits.ts';
import { faultsOf } from './faultsOf.ts';

// The checker of drawings must see what a person would see: each drawing here is spoilt in one way.

const { parts, order } = sealedTwoWay;
const plan = drawSchematic(parts, order);
const spoilt = (change: Partial<SchematicPlan>): string => faultsOf(parts, { ...plan, ...change }).join('; ');
const shifted = (id: string, dx: number): Partial<SchematicPlan> => ({
  parts: plan.parts.map((part) =>
    part.partId === id ? { ...part, centre: { ...part.centre, x: part.centre.x + dx } } : part,
  ),
});

describe('the checker of drawings', () => {
  it('finds nothing wrong with a good drawing', () => expect(spoilt({})).toBe(''));

  it('sees a part that is missing or drawn twice', () => {
    expect(spoilt({ parts: plan.parts.slice(1) })).toContain('drawn');
    expect(spoilt({ parts: [...plan.parts, plan.parts[0]!] })).toContain('drawn');
  });

  it('sees a symbol that lies on another or has its pins elsewhere', () => {
    const far = plan.parts.find((part) => part.partId === 'LS1')!.centre;
    const onSpeaker = plan.parts.map((part) => (part.partId === 'R1' ? { ...part, centre: far } : part));
    expect(spoilt({ parts: onSpeaker })).toMatch(/R1 lies on .*LS1|LS1 lies on .*R1/);
    expect(spoilt(shifted('L1', 0.5))).toContain('pins of L1');
  });

  it('sees a missing wire and a wire of another node', () => {
    const wire = plan.wires.find(({ node }) => node === 'a')!;
    const others = plan.wires.filter((one) => one !== wire);
    expect(spoilt({ wires: others })).toContain('a does not reach');
    expect(spoilt({ wires: [...others, { ...wire, node: 'b' }] })).toMatch(/b touches a|a touches b/);
  });

  it('sees a slanted wire, one through a text, and one that hangs on nothing', () => {
    const slanted = {
      node: 'a',
      points: [
        { x: 1, y: 1 },
        { x: 2, y: 2 },
      ],
    };
    expect(spoilt({ wires: [...plan.wires, slanted] })).toContain('slanted');
    const { valueAnchor } = plan.parts.find((part) => part.partId === 'L1')!;
    const through = {
      node: 'a',
      points: [
        { x: valueAnchor.x, y: valueAnchor.y },
        { x: valueAnchor.x + 2, y: valueAnchor.y },
      ],
    };
    const seen = spoilt({ wires: [...plan.wires, through] });
    expect(seen).toContain('runs through value of L1');
    expect(seen).toContain('hangs on nothing');
  });

  it('sees a dot too few and a dot too many', () => {
    expect(spoilt({ dots: plan.dots.slice(1) })).toContain('without a dot');
    const { pins } = plan.parts.find((part) => part.partId === 'R1')!;
    expect(spoilt({ dots: [...plan.dots, { ...pins[0], node: 'a' }] })).toContain('with a dot');
  });

  it('sees a speaker out of line and a part outside its lane', () => {
    expect(spoilt({ speakerX: plan.speakerX + 1 })).toContain('out of line');
    expect(spoilt({ parts: plan.parts.map((part) => ({ ...part, lane: 0 })) })).toContain('outside its lane');
  });
});

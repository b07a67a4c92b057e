import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compactOhm,
  sectionInductanceH,
  windCompact,
  windingsFor,
  windOnBobbin,
} from '../../../../src/core/build/winding/index.ts';
import { COPPER, WINDING_WIRES } from '../../../../src/core/circuit/wire/index.ts';
import { word } from '../../../../src/core/messages/word.ts';

const stock = { wire: { bareM: 1e-3, overEnamelM: 1.08e-3 }, conductor: COPPER, temperatureC: 20 };
const wish = { henry: 1e-3, ohm: 0.4, wires: WINDING_WIRES, conductor: COPPER, temperatureC: 20 };
const anyHenry = fc.double({ min: Math.log(1e-4), max: Math.log(5e-3), noNaN: true }).map(Math.exp);

describe('windings', () => {
  it('of 1 mH in 1 mm wire are those of the worked example: 169 turns in 13 layers of 13, 0.49 Ω', () => {
    const wound = windCompact(1.0222e-3, stock);
    if (!wound.ok) throw new Error(wound.problems[0]!.code);
    expect(wound.value).toMatchObject({ turnsPerLayer: 13, turns: 169, layers: 13, turnsInLastLayer: 13 });
    expect(wound.value.innerRadiusM).toBeCloseTo(0.01404, 9);
    expect(Math.abs(wound.value.ohm / 0.4909 - 1)).toBeLessThan(2e-3);
    // 22.4 m of a wire of 6.98 g a metre.
    expect(wound.value.conductorKg).toBeCloseTo(0.156, 3);
  });
  it('keep to the wish with the thinnest wire, and the coil stays within half a turn (seed 93)', () => {
    fc.assert(
      fc.property(anyHenry, fc.double({ min: 0.15, max: 1.5, noNaN: true }), (henry, ohm) => {
        const offer = windingsFor({ ...wish, henry, ohm });
        if (!offer.ok) {
          expect(offer.problems[0]!.code).toMatch(/ohm-out-of-reach|too-many-turns/);
          return;
        }
        const { chosen, thinner } = offer.value;
        expect(chosen.ohm).toBeLessThanOrEqual(ohm);
        const place = WINDING_WIRES.indexOf(chosen.wire);
        if (place > 0 && thinner !== null) {
          expect(WINDING_WIRES.indexOf(thinner.wire)).toBe(place - 1);
          expect(thinner.ohm).toBeGreaterThan(ohm);
        } else expect(place).toBe(0);
        // One turn more or less is 2/N of the inductance.
        expect(Math.abs(chosen.henry / henry - 1)).toBeLessThan(1.2 / chosen.turns);
      }),
      { seed: 93, numRuns: 15 },
    );
  });
  it('have the inductance of their section within 1 %, by another formula, and nearly the resistance of the ideal shape', () => {
    for (const henry of [0.15e-3, 0.6e-3, 2.2e-3]) {
      const wound = windCompact(henry, stock);
      if (!wound.ok) throw new Error(wound.problems[0]!.code);
      const { innerRadiusM, turns, turnsPerLayer, pitchM } = wound.value;
      const depthM = (turns / turnsPerLayer) * pitchM;
      const section = { meanRadiusM: innerRadiusM + depthM / 2, lengthM: turnsPerLayer * pitchM, depthM, turns };
      expect(Math.abs(wound.value.henry / sectionInductanceH(section) - 1)).toBeLessThan(0.01);
      expect(Math.abs(wound.value.ohm / compactOhm(henry, stock.wire, COPPER, 20) - 1)).toBeLessThan(0.03);
    }
  });
  it('fill a given bobbin layer by layer', () => {
    const wound = windOnBobbin(0.5e-3, stock, { innerRadiusM: 0.02, lengthM: 0.01081 });
    if (!wound.ok) throw new Error(wound.problems[0]!.code);
    const { layers, turns, turnsInLastLayer, outerRadiusM, turnsPerLayer } = wound.value;
    expect(turnsPerLayer).toBe(10);
    expect((layers - 1) * 10 + turnsInLastLayer).toBe(turns);
    expect(outerRadiusM).toBeCloseTo(0.02 + layers * 1.08e-3, 12);
  });
  it('say in words what cannot be wound', () => {
    const refused = [
      windOnBobbin(1e-3, stock, { innerRadiusM: 0.02, lengthM: 0.001 }),
      windOnBobbin(1, stock, { innerRadiusM: 0.005, lengthM: 0.02 }),
      windingsFor({ ...wish, wires: [] }),
      windingsFor({ ...wish, henry: 20e-3, ohm: 0.1 }),
    ].map((result) => (result.ok ? '' : result.problems[0]!.code));
    expect(refused).toEqual([
      'winding.bobbin-too-narrow',
      'winding.too-many-turns',
      'winding.no-wire',
      'winding.ohm-out-of-reach',
    ]);
    const result = windingsFor({ ...wish, henry: 20e-3, ohm: 0.1 });
    expect(result.ok ? '' : word(result.problems[0]!).sentence).toMatch(/^An air coil of 20 mH has at least [\d.]+ Ω/);
    expect(() => windOnBobbin(0, stock, { innerRadiusM: 0.01, lengthM: 0.01 })).toThrow(RangeError);
  });
});

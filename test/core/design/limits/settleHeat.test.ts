import { describe, expect, it } from 'vitest';
import {
  type CoilHeat,
  equilibriumRiseK,
  heatResistanceKPerW,
  usualCoilHeat,
} from '../../../../src/core/acoustics/index.ts';
import {
  hotModel,
  type Programme,
  programmeHeat,
  programmePowerW,
  settleHeat,
  USUAL_PROGRAMME,
} from '../../../../src/core/design/limits/index.ts';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import { levelsDbSpl } from '../../../../src/core/speaker/complexCurve.ts';
import type { SpeakerModel } from '../../../../src/core/speaker/model.ts';
import { simulate } from '../../../../src/core/speaker/simulate.ts';
import { amplifierPart, speakerAt, speakerPart, twoWay, woofer } from '../../speaker/fixture.ts';

const settled: Programme = {
  bands: USUAL_PROGRAMME,
  crestDb: 12,
  lastsS: Number.POSITIVE_INFINITY,
  startC: 20,
};
const heatOf = (model: SpeakerModel, coils: ReadonlyMap<string, CoilHeat>, programme = settled) => {
  const result = settleHeat(model, coils, programme);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const run = (model: SpeakerModel, hz = sweepGrid(15, 22400, 800)) => {
  const result = simulate(model, hz);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const at = (model: SpeakerModel, voltageV: number): SpeakerModel => ({
  ...model,
  amplifiers: model.amplifiers.map((amplifier) => ({ ...amplifier, voltageV })),
});
/** A coil that hardly moves and has no inductance: a resistor. */
const resistive: SpeakerModel = {
  ...twoWay,
  amplifiers: [{ id: 'V1', voltageV: 40, resistanceOhm: 0 }],
  parts: [amplifierPart, speakerPart('LS1')],
  speakers: [speakerAt('LS1', { ...woofer, leH: 0, blTm: 1e-4 }, 'low')],
};
const small = usualCoilHeat('small');
const both = new Map([
  ['LS1', small],
  ['LS2', usualCoilHeat('dome')],
]);

describe('settleHeat', () => {
  it('a resistive coil on a voltage source settles at the root of the quadratic, estimate and re-solving alike', () => {
    const coils = new Map([['LS1', small]]);
    const coldW = (40 ** 2 / woofer.reOhm) * 2 * 10 ** -1.2;
    const expected = equilibriumRiseK(coldW, heatResistanceKPerW(small.path), 0.00393);
    const { heats, converged, rounds } = heatOf(resistive, coils);
    expect(converged).toBe(true);
    expect(rounds).toBeLessThan(12);
    // The rounds stop within 1e-4 K.
    expect(Math.abs(heats[0]!.riseK - expected)).toBeLessThan(2e-4);
    const [quick] = programmeHeat(run(resistive), coils, settled);
    expect(quick!.riseK).toBeCloseTo(expected, 6);
    expect(quick!.temperatureC).toBeCloseTo(20 + expected, 6);
    expect(quick!.coldPowerW).toBeCloseTo(coldW, 6);
    expect(quick!.powerW * heatResistanceKPerW(small.path)).toBeCloseTo(expected, 6);
  });

  it('a whole two-way: each coil keeps the rise that its own power in the hot circuit sustains', () => {
    const model = at(twoWay, 28);
    const { heats, model: hot, converged } = heatOf(model, both);
    expect(converged).toBe(true);
    // Independent of the search: solve the hot loudspeaker on a finer grid and balance power with rise.
    const { partPowersW, frequenciesHz } = run(hot);
    for (const { partId, riseK } of heats) {
      const powerW = programmePowerW(partPowersW.get(partId)!, frequenciesHz, USUAL_PROGRAMME, 12);
      // Six points to a band against some twenty-five: 1 %.
      expect(Math.abs((powerW * heatResistanceKPerW(both.get(partId)!.path)) / riseK - 1)).toBeLessThan(0.01);
    }
    expect(heats.map(({ riseK }) => riseK).every((riseK) => riseK > 5)).toBe(true);
  });

  it('after a time it is as hot as a run of 300 short spells at frozen resistance', () => {
    const model = at(twoWay, 28);
    const spells = 300;
    const lastsS = 60;
    const hz = sweepGrid(17.8, 22387, 200);
    const terms = [...both].map(([, { path }]) => path.map(() => 0));
    const risesOf = () => terms.map((own) => own.reduce((sum, x) => sum + x, 0));
    for (let spell = 0; spell < spells; spell++) {
      const rises = risesOf();
      const hot = hotModel(model, new Map([...both].map(([id, { metal }], i) => [id, { riseK: rises[i]!, metal }])));
      const { partPowersW } = run(hot, hz);
      [...both].forEach(([id, { path }], i) => {
        const powerW = programmePowerW(partPowersW.get(id)!, hz, USUAL_PROGRAMME, 12);
        path.forEach(({ resistanceKPerW, timeConstantS }, k) => {
          terms[i]![k]! += ((resistanceKPerW * powerW - terms[i]![k]!) * lastsS) / spells / timeConstantS;
        });
      });
    }
    const { heats } = heatOf(model, both, { ...settled, lastsS });
    // First-order spells of 0.2 s against a fastest constant of 1.2 s whose own term has settled by then: 1 %.
    heats.forEach(({ riseK }, i) => {
      expect(Math.abs(riseK / risesOf()[i]! - 1)).toBeLessThan(0.01);
    });
  });

  it('hot coils are quieter in the middle of the band, by about the loss that is stated', () => {
    const { heats, model } = heatOf(resistive, new Map([['LS1', small]]));
    const [cold, hot] = [resistive, model].map((m) => levelsDbSpl(run(m, Float64Array.of(300)).sum)[0]!);
    expect(cold! - hot!).toBeCloseTo(heats[0]!.lossDb, 6);
  });

  it('more drive makes every coil hotter; a coil alone less than in proportion to the power', () => {
    const risesOf = (model: SpeakerModel): number[][] =>
      [5, 10, 20, 40].map((v) => heatOf(at(model, v), both).heats.map(({ riseK }) => riseK));
    const [alone, together] = [risesOf(resistive), risesOf(twoWay)];
    for (let i = 1; i < alone.length; i++) {
      expect(alone[i]![0]!).toBeGreaterThan(alone[i - 1]![0]!);
      expect(alone[i]![0]!).toBeLessThan(4 * alone[i - 1]![0]!);
      together[i]!.forEach((riseK, k) => {
        expect(riseK).toBeGreaterThan(together[i - 1]![k]!);
      });
    }
    // A tweeter behind a reactance larger than its resistance takes more as it warms, which the quick estimate cannot see.
    const { coldPowerW, powerW } = heatOf(at(twoWay, 40), both).heats[1]!;
    expect(powerW).toBeGreaterThan(coldPowerW);
  });

  it('a loudspeaker without heat paths stays as it was', () => {
    const { heats, converged, model } = heatOf(twoWay, new Map());
    expect(heats).toEqual([]);
    expect(converged).toBe(true);
    expect(model.speakers).toEqual(twoWay.speakers);
  });
});

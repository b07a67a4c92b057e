import { describe, expect, it } from 'vitest';
import { randomStream } from '../../../src/core/math/index.ts';
import { logGrid } from '../../../src/core/measured/logGrid.ts';
import {
  channelMatch,
  channelPolarity,
  judgeDifference,
  levelDifference,
  MATCH_WINDOWS,
} from '../../../src/core/measured/match/index.ts';

const USUAL = MATCH_WINDOWS.find(({ id }) => id === 'usual')!;
const options = { fraction: 6, alignHz: [200, 2000] } as const;
const curve = (level: (hz: number) => number, perOctave = 48, fromHz = 20) => {
  const frequenciesHz = logGrid(fromHz, 20000, perOctave);
  return { frequenciesHz, levelsDb: frequenciesHz.map(level) };
};
/** A first-order step of `db` above `atHz`, so that nothing is abrupt. */
const shelf = (hz: number, atHz: number, db: number): number => db / (1 + (atHz / hz) ** 4);
const speaker = (hz: number): number => 88 - 12 * Math.log10(1 + (45 / hz) ** 4) + 2 * Math.sin(3 * Math.log(hz));
const load = (hz: number): number => 20 * Math.log10(6 + 20 / (1 + (4 * Math.log(hz / 45)) ** 2));

describe('levelDifference', () => {
  it('is nothing for a curve against itself, whatever the grid and level', () => {
    const difference = levelDifference(
      curve(speaker),
      curve((hz) => speaker(hz) - 7, 96, 30),
      options,
    )!;
    expect(difference.alignedByDb).toBeCloseTo(7, 3);
    for (const db of difference.differenceDb) expect(Math.abs(db)).toBeLessThan(0.005);
    expect(difference.frequenciesHz[0]).toBeGreaterThanOrEqual(30);
  });
  it('changes its sign with the order', () => {
    const other = curve((hz) => speaker(hz) + shelf(hz, 4000, -1.4));
    const [ab, ba] = [
      levelDifference(curve(speaker), other, options)!,
      levelDifference(other, curve(speaker), options)!,
    ];
    ab.differenceDb.forEach((db, i) => {
      expect(db).toBeCloseTo(-ba.differenceDb[i]!, 12);
    });
  });
  it('needs common ground', () => {
    const low = { frequenciesHz: [20, 100], levelsDb: [80, 80] };
    expect(levelDifference(low, curve(speaker, 48, 90), options)).toBeNull();
    expect(levelDifference(low, curve(speaker), options)).toBeNull();
    expect(levelDifference(low, curve(speaker), { ...options, alignHz: null })!.alignedByDb).toBe(0);
  });
});

describe('channelMatch', () => {
  it('finds a weak tweeter, its place and size, and lays it to sensitivity (noise of seed 2)', () => {
    const random = randomStream(2);
    const rough = (level: (hz: number) => number) => curve((hz) => level(hz) + 0.2 * random.normal());
    const match = channelMatch(
      {
        response: { left: rough(speaker), right: rough((hz) => speaker(hz) - 0.6 + shelf(hz, 4000, -2.4)) },
        impedance: { left: rough(load), right: rough(load) },
      },
      USUAL,
      options,
    );
    expect(match.suspicion).toBe('sensitivity');
    const [excess] = match.response!.judgement.excesses;
    expect(excess!.fromHz).toBeGreaterThan(3000);
    expect(excess!.fromHz).toBeLessThan(5000);
    expect(excess!.worstDb).toBeGreaterThan(1.5);
    // Positive: the left is louder.
    expect(match.response!.difference.differenceDb.at(-1)).toBeCloseTo(2.4, 0);
    expect(match.response!.difference.alignedByDb).toBeCloseTo(0.6, 1);
    expect(match.impedance!.judgement.within).toBe(true);
  });
  it('lays a difference of both to the network, of the impedance alone to itself', () => {
    const right = curve((hz) => load(hz) + shelf(hz, 2000, 2));
    const impedance = { left: curve(load), right };
    const off = { left: curve(speaker), right: curve((hz) => speaker(hz) + shelf(hz, 3000, -3)) };
    const same = { left: curve(speaker), right: curve(speaker) };
    const suspicion = (pair: Parameters<typeof channelMatch>[0]) => channelMatch(pair, USUAL, options).suspicion;
    expect(suspicion({ response: off, impedance })).toBe('network');
    expect(suspicion({ response: same, impedance })).toBe('impedance-alone');
    expect(suspicion({ response: off, impedance: null })).toBe('open');
    expect(suspicion({ response: same, impedance: { left: right, right } })).toBe('none');
  });
});

describe('judgeDifference', () => {
  const at = (frequenciesHz: number[], differenceDb: number[]) => ({
    frequenciesHz: Float64Array.from(frequenciesHz),
    differenceDb: Float64Array.from(differenceDb),
    alignedByDb: 0,
  });
  it('keeps runs apart by side and by limit, the greatest excess first', () => {
    const difference = at([100, 200, 400, 800, 1600, 3200], [0, 2, 3, -1.5, -0.4, 9]);
    const judged = judgeDifference(difference, [{ fromHz: 100, toHz: 2000, limitDb: 1 }]);
    expect(judged.excesses).toEqual([
      { fromHz: 200, toHz: 400, worstDb: 3, atHz: 400, meanDb: 2.5, limitDb: 1 },
      { fromHz: 800, toHz: 800, worstDb: -1.5, atHz: 800, meanDb: -1.5, limitDb: 1 },
    ]);
    expect(judged.worst).toEqual({ atHz: 400, differenceDb: 3, limitDb: 1 });
    expect(judged.rmsDb).toBeCloseTo(Math.sqrt((4 + 9 + 2.25 + 0.16) / 5), 12);
  });
  it('names the worst place even where all is well, and nothing where nothing is judged', () => {
    const difference = at([100, 200], [0.2, -0.7]);
    expect(judgeDifference(difference, [{ fromHz: 50, toHz: 500, limitDb: 1 }])).toMatchObject({
      within: true,
      worst: { atHz: 200, differenceDb: -0.7 },
    });
    expect(judgeDifference(difference, [])).toMatchObject({ within: true, worst: null, rmsDb: 0 });
  });
});

describe('channelPolarity', () => {
  const table = (delayS: number, turn: number) => {
    const frequenciesHz = logGrid(100, 10000, 48);
    const phasesRad = frequenciesHz.map((hz) => turn - 2 * Math.PI * hz * delayS - Math.atan(hz / 2000));
    return { frequenciesHz, magnitudes: frequenciesHz.map(() => 1), phasesRad };
  };
  it('tells reversal from delay', () => {
    for (const delayS of [0, 0.3e-3, -1.1e-3])
      for (const turn of [0, Math.PI]) {
        const found = channelPolarity(table(delayS, turn), table(0, 0), [200, 5000])!;
        expect(found.delayS).toBeCloseTo(delayS, 8);
        expect(found.polarity).toBe(turn === 0 ? 'same' : 'reversed');
        expect(found.coherence).toBeCloseTo(1, 6);
      }
    expect(channelPolarity(table(0, 0), table(0, 0), [50, 5000])).toBeNull();
  });
});

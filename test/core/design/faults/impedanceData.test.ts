import { describe, expect, it } from 'vitest';
import { evenly, impedanceData, missInto } from '../../../../src/core/design/faults/impedanceData.ts';
import { sweepGrid } from '../../../../src/core/design/sweepGrid.ts';
import { randomStream } from '../../../../src/core/math/index.ts';
import { simulate } from '../../../../src/core/speaker/simulate.ts';
import { demoModel } from './demoBuild.ts';

const SEED = 5150;

describe('a taken impedance', () => {
  it.each([0.004, 0.01, 0.03])(`tells its own noise, %f of a reading, within a sixth, seed ${SEED}`, (noise) => {
    const random = randomStream(SEED);
    const frequenciesHz = sweepGrid(10, 20_000, 400);
    const simulation = simulate(demoModel('reading-room'), frequenciesHz);
    if (!simulation.ok) throw new Error('not solved');
    const { re, im } = simulation.value.amplifiers[0]!.impedance;
    const magnitudesOhm = re.map((x, f) => Math.hypot(x, im[f]!) * (1 + noise * random.normal()));
    const data = impedanceData({ frequenciesHz, magnitudesOhm, phasesDeg: null, noiseShare: null })!;
    // The median of 398 second differences scatters by about 5 %; the curve's own bends add a little at 0.4 %.
    expect(data.noise / noise).toBeGreaterThan(0.84);
    expect(data.noise / noise).toBeLessThan(1.17);
  });

  it('is thinned evenly, ends kept, and cut to what a model holds for', () => {
    const frequenciesHz = sweepGrid(1, 100_000, 4000);
    const data = impedanceData({
      frequenciesHz,
      magnitudesOhm: frequenciesHz.map(() => 8),
      phasesDeg: null,
      noiseShare: 0.01,
    })!;
    expect(data.omegas.length).toBe(256);
    expect(data.omegas[0]! / (2 * Math.PI)).toBeCloseTo(5, 1);
    expect(data.omegas.at(-1)! / (2 * Math.PI)).toBeLessThanOrEqual(20_000);
    expect(evenly([1, 2, 3], 9)).toEqual([1, 2, 3]);
    expect(evenly([0, 1, 2, 3, 4], 3)).toEqual([0, 2, 4]);
  });

  it('is refused with fewer than 12 readings that can be used', () => {
    const frequenciesHz = sweepGrid(10, 20_000, 11);
    const eights = frequenciesHz.map(() => 8);
    expect(impedanceData({ frequenciesHz, magnitudesOhm: eights, phasesDeg: null, noiseShare: 0.01 })).toBeNull();
    const broken = sweepGrid(10, 20_000, 30).map(() => Number.NaN);
    const many = { frequenciesHz: sweepGrid(10, 20_000, 30), phasesDeg: null, noiseShare: 0.01 };
    expect(impedanceData({ ...many, magnitudesOhm: broken })).toBeNull();
  });

  it('misses by the turn between two angles, whole turns aside, and by size alone beyond what gear reads', () => {
    const frequenciesHz = sweepGrid(10, 20_000, 12);
    const data = impedanceData({
      frequenciesHz,
      magnitudesOhm: frequenciesHz.map(() => 10),
      phasesDeg: frequenciesHz.map(() => 350),
      noiseShare: 0.01,
    })!;
    const out = new Float64Array(2);
    const z = (size: number, deg: number) => ({
      re: frequenciesHz.map(() => size * Math.cos((deg * Math.PI) / 180)),
      im: frequenciesHz.map(() => size * Math.sin((deg * Math.PI) / 180)),
    });
    expect(missInto(out, data, z(5, 10), 3)).toBe(true);
    expect(out[0]).toBeCloseTo(Math.LN2, 12);
    expect(out[1]).toBeCloseTo((-20 * Math.PI) / 180, 12);
    expect(missInto(out, data, z(1e9, 80), 3)).toBe(false);
    expect(out[0]).toBeCloseTo(Math.log(10 / 2e4), 12);
    expect(out[1]).toBe(0);
  });
});

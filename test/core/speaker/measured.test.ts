import { describe, expect, it } from 'vitest';
import { unwrapPhase } from '../../../src/core/measured/unwrapPhase.ts';
import { magnitudes } from '../../../src/core/speaker/complexCurve.ts';
import type { MeasuredTable, SpeakerModel } from '../../../src/core/speaker/model.ts';
import { simulate } from '../../../src/core/speaker/simulate.ts';
import { vented } from './fixture.ts';

const grid = Float64Array.from({ length: 400 }, (_, i) => 10 * 10 ** ((3.3 * i) / 399));
const run = (model: SpeakerModel) => {
  const result = simulate(model, grid);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const plain = run(vented);
const phases = (re: Float64Array, im: Float64Array, plusDelayS = 0): Float64Array => {
  const out = re.map((x, i) => Math.atan2(im[i]!, x) + 2 * Math.PI * grid[i]! * plusDelayS);
  return unwrapPhase(out);
};

/** The model's own response per volt at 1 m, delay taken out, as if it had been measured. */
function ownResponse(): MeasuredTable {
  const { pressure, terminalVoltage: volts } = plain.speakers[0]!;
  const ratio = (i: number) => {
    const square = volts.re[i]! ** 2 + volts.im[i]! ** 2;
    return {
      re: (pressure.re[i]! * volts.re[i]! + pressure.im[i]! * volts.im[i]!) / square,
      im: (pressure.im[i]! * volts.re[i]! - pressure.re[i]! * volts.im[i]!) / square,
    };
  };
  const re = grid.map((_, i) => ratio(i).re);
  const im = grid.map((_, i) => ratio(i).im);
  return { frequenciesHz: grid, magnitudes: magnitudes({ re, im }), phasesRad: phases(re, im, 1 / 343.2) };
}
const impedanceOf = (model: SpeakerModel): MeasuredTable => {
  const { re, im } = run({ ...model, amplifiers: [{ id: 'V1', voltageV: 2.83, resistanceOhm: 0 }] }).amplifiers[0]!
    .impedance;
  return { frequenciesHz: grid, magnitudes: magnitudes({ re, im }), phasesRad: phases(re, im) };
};
const carrying = (measured: NonNullable<SpeakerModel['speakers'][number]['measured']>): SpeakerModel => ({
  ...vented,
  speakers: vented.speakers.map((s) => ({ ...s, measured })),
});

describe('a measured curve', () => {
  it('that is the model’s own changes nothing', () => {
    const response = { ...ownResponse(), baffle: 'infinite' as const };
    const blended = run(carrying({ blendHz: 500, response, impedance: impedanceOf(vented) }));
    for (let i = 0; i < grid.length; i++) {
      const size = Math.hypot(plain.sum.re[i]!, plain.sum.im[i]!);
      expect(Math.abs(blended.sum.re[i]! - plain.sum.re[i]!) / size).toBeLessThan(1e-6);
      expect(Math.abs(blended.sum.im[i]! - plain.sum.im[i]!) / size).toBeLessThan(1e-6);
      expect(blended.amplifiers[0]!.impedance.re[i]! / plain.amplifiers[0]!.impedance.re[i]!).toBeCloseTo(1, 6);
    }
  });

  it('rules above its blend and leaves the box alone below', () => {
    const own = ownResponse();
    const louder = { ...own, magnitudes: own.magnitudes.map((x) => 2 * x), baffle: 'infinite' as const };
    const blended = run(carrying({ blendHz: 500, response: louder, impedance: null }));
    const ratio = magnitudes(blended.speakers[0]!.pressure).map(
      (x, i) => x / magnitudes(plain.speakers[0]!.pressure)[i]!,
    );
    grid.forEach((hz, i) => {
      if (hz < 350) expect(ratio[i]).toBe(1);
      else if (hz > 710) expect(ratio[i]).toBeCloseTo(2, 6);
      else expect(ratio[i]! >= 1 - 1e-9 && ratio[i]! <= 2 + 1e-9).toBe(true);
    });
  });

  it('of impedance is what the network sees above its blend', () => {
    const table = impedanceOf(vented);
    const doubled = { ...table, magnitudes: table.magnitudes.map((x) => 2 * x) };
    const blended = magnitudes(
      run(carrying({ blendHz: 500, response: null, impedance: doubled })).amplifiers[0]!.impedance,
    );
    const before = magnitudes(plain.amplifiers[0]!.impedance);
    grid.forEach((hz, i) => {
      if (hz < 350) expect(blended[i]! / before[i]!).toBeCloseTo(1, 9);
      if (hz > 710) expect(blended[i]! / before[i]!).toBeCloseTo(2, 6);
    });
  });
});

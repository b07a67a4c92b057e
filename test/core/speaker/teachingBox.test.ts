import { type Complex, complex, type Matrix, matrix, multiply } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { findMinimum } from '../../../src/core/math/findMinimum.ts';
import type { SpeakerModel } from '../../../src/core/speaker/model.ts';
import { readModel } from '../../../src/core/speaker/readModel.ts';
import { simulate } from '../../../src/core/speaker/simulate.ts';
import { demoProject } from '../design/demoProject.ts';

const lesson = demoProject('port-lesson');
const modelWith = (lengthM: number): SpeakerModel => {
  const ports = lesson.enclosure.ports.map((port) => ({ ...port, lengthM }));
  const read = readModel({ ...lesson, enclosure: { ...lesson.enclosure, ports } });
  if (!read.ok) throw new Error('not read');
  return read.value.model;
};

/**
 * Input impedance by two-ports in a chain, [across; through] = M [across; through] of the next: coil in series, motor as a
 * transformer-like turn of current into force, moving parts in series, cone area, then the box as a shunt. Written for this test alone.
 */
function chainImpedance(model: SpeakerModel, hz: number): Complex {
  const w = 2 * Math.PI * hz;
  const { parameters: d } = model.speakers[0]!;
  const [chamber] = model.chambers;
  const [port] = model.ports;
  const c = (re: number, im = 0): Complex => complex(re, im);
  const one = c(1);
  const none = c(0);
  const series = (z: Complex): Matrix =>
    matrix([
      [one, z],
      [none, one],
    ] as never);
  const compliance = chamber!.volumeM3 / (model.air.densityKgPerM3 * model.air.soundSpeedMPerS ** 2);
  const invert = (z: Complex): Complex => {
    const size = z.re ** 2 + z.im ** 2;
    return c(z.re / size, -z.im / size);
  };
  const sum = (...terms: Complex[]): Complex =>
    terms.reduce((all, z) => c(all.re + z.re, all.im + z.im), c(0)) as Complex;
  const stated = (loss: { q: number; atHz: number } | null): number =>
    loss === null ? 0 : 1 / (2 * Math.PI * loss.atHz * compliance * loss.q);
  const air = invert(c(stated(chamber!.absorption), -1 / (w * compliance)));
  const leak = chamber!.leak === null ? none : c((2 * Math.PI * chamber!.leak.atHz * compliance) / chamber!.leak.q);
  const vent = invert(c(stated(port!.loss), (w * model.air.densityKgPerM3 * port!.effectiveLengthM) / port!.areaM2));
  const box = sum(air, leak, vent);
  // v = Bl u, F = Bl i: across and through change places.
  const motor = matrix([
    [none, c(d.blTm)],
    [c(1 / d.blTm), none],
  ] as never);
  const area = matrix([
    [c(d.sdM2), none],
    [none, c(1 / d.sdM2)],
  ] as never);
  const shunt = matrix([
    [one, none],
    [box, one],
  ] as never);
  const chain = [
    series(c(d.reOhm, w * d.leH)),
    motor,
    series(c(d.rmsKgPerS, w * d.mmsKg - 1 / (w * d.cmsMPerN))),
    area,
    shunt,
  ].reduce((all, next) => multiply(all, next) as Matrix);
  // Nothing flows out at the end of the chain: Z = A/C.
  const [[a], [b]] = chain.toArray() as unknown as [[Complex], [Complex]];
  const inverse = invert(b);
  return c(a.re * inverse.re - a.im * inverse.im, a.re * inverse.im + a.im * inverse.re);
}

const grid = Float64Array.from({ length: 3000 }, (_, i) => 12 * 1.0013 ** i);
const solved = (model: SpeakerModel): Float64Array => {
  const result = simulate(model, grid);
  if (!result.ok) throw new Error('not solved');
  const { re, im } = result.value.amplifiers[0]!.impedance;
  return re.map((x, i) => Math.hypot(x, im[i]!));
};
/** Peaks and the dip between them, Hz, from the highest point of the grid on, by the smooth formula. */
const turns = (size: (hz: number) => number, curve: Float64Array): [number, number, number] => {
  const peaks = [...curve.keys()].filter(
    (i) => i > 0 && curve[i]! > curve[i - 1]! && curve[i]! >= (curve[i + 1] ?? Infinity),
  );
  const [lower, upper] = peaks.slice(0, 2) as [number, number];
  const dip = [...curve.keys()].find(
    (i) => i > lower && i < upper && curve[i]! < curve[i - 1]! && curve[i]! <= curve[i + 1]!,
  )!;
  const refine = (i: number, sign: 1 | -1): number =>
    findMinimum((hz) => sign * size(hz), grid[i - 1]!, grid[i + 1]!, 1e-8).x;
  return [refine(lower, -1), refine(dip, 1), refine(upper, -1)];
};

describe('the teaching box', () => {
  const magnitude = (model: SpeakerModel) => (hz: number) => {
    const z = chainImpedance(model, hz);
    return Math.hypot(z.re, z.im);
  };

  it.each([0.06, 0.09, 0.12])(
    'has the impedance of the independent two-port chain with a tube of %d m, peaks and dip with it',
    (lengthM) => {
      const model = modelWith(lengthM);
      const curve = solved(model);
      const chain = magnitude(model);
      expect(Math.max(...grid.map((hz, i) => Math.abs(curve[i]! / chain(hz) - 1)))).toBeLessThan(1e-9);
      const fromCurve = turns((hz) => {
        const one = simulate(model, Float64Array.of(hz));
        if (!one.ok) throw new Error('not solved');
        const { re, im } = one.value.amplifiers[0]!.impedance;
        return Math.hypot(re[0]!, im[0]!);
      }, curve);
      const fromChain = turns(chain, curve);
      for (const [i, hz] of fromCurve.entries()) expect(Math.abs(hz / fromChain[i]! - 1)).toBeLessThan(1e-4);
    },
  );

  it('with 5 mm less tube is tuned higher by the square root of the acoustic lengths, and dip and peaks follow', () => {
    const whole = modelWith(0.09);
    const cut = modelWith(0.085);
    const ratio = Math.sqrt(whole.ports[0]!.effectiveLengthM / cut.ports[0]!.effectiveLengthM);
    expect(ratio).toBeGreaterThan(1.01);
    // The box grows by what the 5 mm of tube took: a few cubic centimetres.
    const tuning = ratio * Math.sqrt(whole.chambers[0]!.volumeM3 / cut.chambers[0]!.volumeM3);
    // The formula is that of a box without losses and a coil without inductance, which both pull at the dip.
    const bare = (model: SpeakerModel): SpeakerModel => ({
      ...model,
      speakers: model.speakers.map((one) => ({ ...one, parameters: { ...one.parameters, leH: 0 } })),
      chambers: model.chambers.map((one) => ({ ...one, leak: null, absorption: null })),
      ports: model.ports.map((one) => ({ ...one, loss: null })),
    });
    const dip = (model: SpeakerModel): number => turns(magnitude(model), solved(model))[1];
    expect(Math.abs(dip(bare(cut)) / dip(bare(whole)) / tuning - 1)).toBeLessThan(1e-5);
    const before = turns(magnitude(whole), solved(whole));
    const after = turns(magnitude(cut), solved(cut));
    expect(Math.abs(after[1] / before[1] / tuning - 1)).toBeLessThan(2e-3);
    expect(after[0]).toBeGreaterThan(before[0]);
    expect(after[2]).toBeGreaterThan(before[2]);
  });
});

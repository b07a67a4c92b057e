import { add, type Complex, complex, divide, inv, lusolve, type Matrix, multiply, sqrt } from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { SpeakerModel } from '../../../src/core/speaker/model.ts';
import { pointSource } from '../../../src/core/speaker/pointSource.ts';
import { simulate } from '../../../src/core/speaker/simulate.ts';
import { air, amplifierPart, speakerAt, speakerPart, woofer } from './fixture.ts';

// Independent computation: the equations of coil, cone and air written out as one matrix and solved by a library.
const grid = Float64Array.from({ length: 40 }, (_, i) => 15 * 1.15 ** i);
const run = (model: SpeakerModel) => {
  const result = simulate(model, grid);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const c = (re: number, im = 0): Complex => complex(re, im);
const solve = (matrix: Complex[][], right: Complex[]): Complex[] =>
  (lusolve(matrix as never, right as never) as unknown as Matrix).valueOf().flat() as unknown as Complex[];
const near = (got: { re: Float64Array; im: Float64Array }, i: number, wanted: Complex): void => {
  const size = Math.hypot(wanted.re, wanted.im);
  expect(Math.hypot(got.re[i]! - wanted.re, got.im[i]! - wanted.im) / size).toBeLessThan(1e-9);
};

const small = { ...woofer, sdM2: 0.009, mmsKg: 0.011, blTm: 5.1, cmsMPerN: 0.0009, rmsKgPerS: 0.7, reOhm: 3.4 };
const stiffness = air.densityKgPerM3 * air.soundSpeedMPerS ** 2;
const base: SpeakerModel = {
  air,
  amplifiers: [{ id: 'V1', voltageV: 2.83, resistanceOhm: 0.2 }],
  parts: [amplifierPart, speakerPart('LS1'), speakerPart('LS2')],
  speakers: [],
  chambers: [],
  ports: [],
  passiveRadiators: [],
  radiation: 'half-space',
};
const mechanical = (d: typeof woofer, w: number) => c(d.rmsKgPerS, w * d.mmsKg - 1 / (w * d.cmsMPerN));
const coil = (d: typeof woofer, w: number) => c(d.reOhm, w * d.leH);

describe('coupled drivers', () => {
  it('two unequal drivers on one vented chamber agree with the hand-written matrix', () => {
    const port = { id: 'P1', chamberId: 'low', areaM2: 0.004, effectiveLengthM: 0.2, loss: null };
    const result = run({
      ...base,
      speakers: [speakerAt('LS1', woofer, 'low'), speakerAt('LS2', small, 'low')],
      chambers: [{ id: 'low', volumeM3: 0.04, leak: { q: 8, atHz: 40 }, absorption: null }],
      ports: [{ ...port, radiation: pointSource(1) }],
    });
    grid.forEach((hz, i) => {
      const w = 2 * Math.PI * hz;
      const compliance = 0.04 / stiffness;
      const air1 = add(
        add(c(0, w * compliance), c((2 * Math.PI * 40 * compliance) / 8)),
        inv(c(0, (w * air.densityKgPerM3 * 0.2) / 0.004)),
      ) as Complex;
      // Unknowns: i1, i2, u1, u2, p. Rs (i1 + i2) + Ze i + Bl u = V; Bl i = Zm u - Sd p (p pushes forwards); Y p = -(S1 u1 + S2 u2).
      const [x1, x2, u1, , p] = solve(
        [
          [add(c(0.2), coil(woofer, w)) as Complex, c(0.2), c(woofer.blTm), c(0), c(0)],
          [c(0.2), add(c(0.2), coil(small, w)) as Complex, c(0), c(small.blTm), c(0)],
          [c(-woofer.blTm), c(0), mechanical(woofer, w), c(0), c(-woofer.sdM2)],
          [c(0), c(-small.blTm), c(0), mechanical(small, w), c(-small.sdM2)],
          [c(0), c(0), c(woofer.sdM2), c(small.sdM2), air1],
        ],
        [c(2.83), c(2.83), c(0), c(0), c(0)],
      ) as [Complex, Complex, Complex, Complex, Complex];
      near(result.speakers[0]!.current, i, x1);
      near(result.speakers[1]!.current, i, x2);
      near(result.speakers[0]!.volumeVelocity, i, multiply(u1, woofer.sdM2) as Complex);
      near(result.ports[0]!.volumeVelocity, i, divide(p, c(0, (w * air.densityKgPerM3 * 0.2) / 0.004)) as Complex);
    });
  });

  it('a driver between two vented chambers agrees with the equations of a sixth-order band-pass', () => {
    const port = (id: string, chamberId: string, areaM2: number) => ({
      id,
      chamberId,
      areaM2,
      effectiveLengthM: 0.15,
      loss: null,
      radiation: pointSource(1),
    });
    const result = run({
      ...base,
      parts: [amplifierPart, speakerPart('LS1')],
      speakers: [{ ...speakerAt('LS1', woofer, 'rear'), frontChamberId: 'front' }],
      chambers: [
        { id: 'rear', volumeM3: 0.05, leak: null, absorption: null },
        { id: 'front', volumeM3: 0.02, leak: { q: 20, atHz: 60 }, absorption: null },
      ],
      ports: [port('PR', 'rear', 0.003), port('PF', 'front', 0.006)],
    });
    grid.forEach((hz, i) => {
      const w = 2 * Math.PI * hz;
      const air1 = (volumeM3: number, areaM2: number, q: number) => {
        const compliance = volumeM3 / stiffness;
        const leak = q > 0 ? (2 * Math.PI * 60 * compliance) / q : 0;
        return add(c(leak, w * compliance), inv(c(0, (w * air.densityKgPerM3 * 0.15) / areaM2))) as Complex;
      };
      const rear = inv(air1(0.05, 0.003, 0)) as Complex;
      const front = inv(air1(0.02, 0.006, 20)) as Complex;
      const load = multiply(add(rear, front), woofer.sdM2 ** 2) as Complex;
      const total = add(mechanical(woofer, w), load) as Complex;
      const impedance = add(coil(woofer, w), divide(c(woofer.blTm ** 2), total)) as Complex;
      near(result.amplifiers[0]!.impedance, i, impedance);
      const current = divide(c(2.83), add(impedance, 0.2)) as Complex;
      const flow = multiply(divide(multiply(current, woofer.blTm), total), woofer.sdM2) as Complex;
      const mass = (areaM2: number) => c(0, (w * air.densityKgPerM3 * 0.15) / areaM2);
      near(result.ports[0]!.volumeVelocity, i, divide(multiply(multiply(flow, -1), rear), mass(0.003)) as Complex);
      near(result.ports[1]!.volumeVelocity, i, divide(multiply(flow, front), mass(0.006)) as Complex);
    });
  });

  it('a port between two chambers carries what the pressures on its sides drive through it', () => {
    const result = run({
      ...base,
      parts: [amplifierPart, speakerPart('LS1')],
      speakers: [speakerAt('LS1', woofer, 'near')],
      chambers: [
        { id: 'near', volumeM3: 0.02, leak: null, absorption: null },
        { id: 'far', volumeM3: 0.03, leak: null, absorption: null },
      ],
      ports: [
        {
          id: 'P1',
          chamberId: 'near',
          toChamberId: 'far',
          areaM2: 0.002,
          effectiveLengthM: 0.1,
          loss: null,
          radiation: pointSource(1),
        },
      ],
    });
    expect(Math.max(...result.ports[0]!.pressure.re.map(Math.abs))).toBe(0);
    grid.forEach((hz, i) => {
      const w = 2 * Math.PI * hz;
      const inner = w * (0.02 / stiffness);
      const branch = (w * air.densityKgPerM3 * 0.1) / 0.002 - 1 / (w * (0.03 / stiffness));
      const box = c(0, -1 / (inner - 1 / branch));
      const total = add(mechanical(woofer, w), multiply(box, woofer.sdM2 ** 2)) as Complex;
      near(result.amplifiers[0]!.impedance, i, add(coil(woofer, w), divide(c(woofer.blTm ** 2), total)) as Complex);
    });
  });
});

describe('a line behind a driver', () => {
  const lined = (end: 'closed' | 'open', lengthM: number): SpeakerModel => ({
    ...base,
    parts: [amplifierPart, speakerPart('LS1')],
    speakers: [speakerAt('LS1', woofer, 'throat')],
    chambers: [{ id: 'throat', volumeM3: 0.002, leak: null, absorption: null }],
    lines: [
      {
        id: 'T1',
        chamberId: 'throat',
        lengthM,
        startAreaM2: 0.02,
        endAreaM2: 0.02,
        filled: null,
        end: end === 'closed' ? { kind: 'closed' } : { kind: 'open', radiation: pointSource(1) },
      },
    ],
  });

  it('agrees with the exact formula of a closed line with wall losses', () => {
    const result = run(lined('closed', 1.7));
    // Constants of the air at 20 °C as the source of the formula gives them; walls of a square duct.
    const viscosity = (1.716e-5 * (293.15 / 273.15) ** 1.5 * (273.15 + 110.4)) / (293.15 + 110.4);
    const perimeter = 4 * Math.sqrt(0.02);
    grid.forEach((hz, i) => {
      const w = 2 * Math.PI * hz;
      const depth = Math.sqrt((2 * viscosity) / (air.densityKgPerM3 * w));
      const share = (d: number) => c((perimeter * d) / 0.04, (-perimeter * d) / 0.04);
      const series = divide(c(0, (w * air.densityKgPerM3) / 0.02), add(c(1), multiply(share(depth), -1))) as Complex;
      const heat = add(c(1), multiply(share(depth / Math.sqrt(0.71)), 0.401)) as Complex;
      const shunt = multiply(c(0, (w * 0.02) / stiffness), heat) as Complex;
      const gamma = sqrt(multiply(series, shunt) as Complex) as Complex;
      const wave = sqrt(divide(series, shunt) as Complex) as Complex;
      // coth of a complex number from real functions.
      const a = gamma.re * 1.7;
      const b = gamma.im * 1.7;
      const bottom = Math.cosh(2 * a) - Math.cos(2 * b);
      const coth = c(Math.sinh(2 * a) / bottom, -Math.sin(2 * b) / bottom);
      const line = multiply(wave, coth) as Complex;
      const box = inv(add(c(0, (w * 0.002) / stiffness), inv(line)) as Complex) as Complex;
      const total = add(mechanical(woofer, w), multiply(box, woofer.sdM2 ** 2)) as Complex;
      near(result.amplifiers[0]!.impedance, i, add(coil(woofer, w), divide(c(woofer.blTm ** 2), total)) as Complex);
    });
  });

  it('an open end behaves near its quarter wave as a port does at the tuning: the cone stands almost still there', () => {
    const fine = Float64Array.from({ length: 400 }, (_, i) => 20 + 0.25 * i);
    const result = simulate(lined('open', 1.7), fine);
    if (!result.ok) throw new Error('not solved');
    const { excursionPeakM } = result.value.speakers[0]!;
    const mouth = result.value.lines[0]!;
    const stillest = excursionPeakM.indexOf(Math.min(...excursionPeakM.subarray(40)));
    const radiusM = Math.sqrt(0.02 / Math.PI);
    const quarterHz = air.soundSpeedMPerS / (4 * (1.7 + 0.85 * radiusM));
    // The throat's 2 litres lower it a little.
    expect(fine[stillest]!).toBeGreaterThan(0.85 * quarterHz);
    expect(fine[stillest]!).toBeLessThan(quarterHz);
    expect(mouth.airSpeedRmsMPerS[stillest]!).toBeGreaterThan(0);
  });
});

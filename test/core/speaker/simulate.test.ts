import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { magnitudes } from '../../../src/core/speaker/complexCurve.ts';
import type { SpeakerModel } from '../../../src/core/speaker/model.ts';
import { pointSource } from '../../../src/core/speaker/pointSource.ts';
import { simulate } from '../../../src/core/speaker/simulate.ts';
import { air, amplifierPart, speakerAt, speakerPart, twoWay, vented, woofer } from './fixture.ts';

const grid = Float64Array.from({ length: 60 }, (_, i) => 12 * 1.13 ** i);
const run = (model: SpeakerModel) => {
  const result = simulate(model, grid);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const worstRatio = (a: Float64Array, b: Float64Array): number =>
  a.reduce((worst, value, i) => Math.max(worst, Math.abs(value / b[i]! - 1)), 0);

describe('simulate', () => {
  it('agrees with the direct equations of a vented loudspeaker', () => {
    // Independent computation: Kirchhoff in the coil, Newton on the cone, continuity in the chamber, with mathless complex pairs.
    const result = run(vented);
    const { reOhm, leH, blTm, mmsKg, cmsMPerN, rmsKgPerS, sdM2 } = woofer;
    const cab = 0.035 / (air.densityKgPerM3 * air.soundSpeedMPerS ** 2);
    const wb = 2 * Math.PI * 38;
    const mul = (a: number[], b: number[]) => [a[0]! * b[0]! - a[1]! * b[1]!, a[0]! * b[1]! + a[1]! * b[0]!];
    const inv = (a: number[]) => [a[0]! / (a[0]! ** 2 + a[1]! ** 2), -a[1]! / (a[0]! ** 2 + a[1]! ** 2)];
    const add = (...terms: number[][]) => terms.reduce((s, t) => [s[0]! + t[0]!, s[1]! + t[1]!], [0, 0]);
    grid.forEach((hz, i) => {
      const w = 2 * Math.PI * hz;
      const air1 = inv([1 / (wb * cab * 50), -1 / (w * cab)]);
      const leak = [(wb * cab) / 7, 0];
      const port = inv([1 / (wb * cab * 40), (w * air.densityKgPerM3 * 0.23) / 0.0038]);
      const box = inv(add(air1, leak, port));
      const mechanical = add([rmsKgPerS, w * mmsKg - 1 / (w * cmsMPerN)], mul([sdM2 ** 2, 0], box));
      const impedance = add([reOhm, w * leH], mul([blTm ** 2, 0], inv(mechanical)));
      expect(result.amplifiers[0]!.impedance.re[i]! / impedance[0]!).toBeCloseTo(1, 9);
      const current = mul([2.83, 0], inv(add(impedance, [0.1, 0])));
      const velocity = mul(mul([blTm, 0], current), inv(mechanical));
      const excursion = (Math.SQRT2 * Math.hypot(velocity[0]!, velocity[1]!)) / w;
      expect(result.speakers[0]!.excursionPeakM[i]! / excursion).toBeCloseTo(1, 9);
      const boxPressure = mul(mul([-sdM2, 0], velocity), box);
      const flow = mul(boxPressure, port);
      expect(result.ports[0]!.airSpeedRmsMPerS[i]! / (Math.hypot(flow[0]!, flow[1]!) / 0.0038)).toBeCloseTo(1, 9);
    });
  });

  it('loses all the power that the amplifier delivers, to 1e-9', () => {
    const result = run(twoWay);
    const { current } = result.amplifiers[0]!;
    grid.forEach((_hz, i) => {
      let lost = 0.1 * (current.re[i]! ** 2 + current.im[i]! ** 2);
      for (const powers of result.partPowersW.values()) lost += powers[i]!;
      for (const speaker of result.speakers) {
        const { parameters } = twoWay.speakers.find((s) => s.partId === speaker.partId)!;
        const u = Math.hypot(speaker.volumeVelocity.re[i]!, speaker.volumeVelocity.im[i]!) / parameters.sdM2;
        lost += parameters.rmsKgPerS * u * u;
        const k = parameters.semiInductance;
        if (k !== null) {
          const resistance = k.kOhmSn * (2 * Math.PI * grid[i]!) ** k.exponent * Math.cos((k.exponent * Math.PI) / 2);
          lost += resistance * (speaker.current.re[i]! ** 2 + speaker.current.im[i]! ** 2);
        }
      }
      // Chamber: leak, absorption and port loss, from its pressure by way of the port's flow.
      const cab = 0.035 / (air.densityKgPerM3 * air.soundSpeedMPerS ** 2);
      const wb = 2 * Math.PI * 38;
      const w = 2 * Math.PI * grid[i]!;
      const flow = 0.0038 * result.ports[0]!.airSpeedRmsMPerS[i]!;
      const portR = 1 / (wb * cab * 40);
      const pressure = flow * Math.hypot(portR, (w * air.densityKgPerM3 * 0.23) / 0.0038);
      const airR = 1 / (wb * cab * 50);
      lost += portR * flow ** 2 + (pressure ** 2 * wb * cab) / 7;
      lost += (airR * pressure ** 2) / (airR ** 2 + (1 / (w * cab)) ** 2);
      expect(lost / (2.83 * current.re[i]!)).toBeCloseTo(1, 9);
    });
  });

  it('takes two woofers of half the area and motor in parallel for one whole woofer (seed 11)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.1, noNaN: true }),
        fc.double({ min: 2, max: 30, noNaN: true }),
        (volumeM3, q) => {
          const chamber = { id: 'low', volumeM3, leak: { q, atHz: 38 }, absorption: null };
          const whole = run({ ...vented, chambers: [chamber] });
          // Twice the coil on half the motor and mass: two of them in parallel are the whole.
          const half = {
            ...woofer,
            reOhm: 2 * woofer.reOhm,
            leH: 2 * woofer.leH,
            mmsKg: woofer.mmsKg / 2,
            cmsMPerN: 2 * woofer.cmsMPerN,
            rmsKgPerS: woofer.rmsKgPerS / 2,
            sdM2: woofer.sdM2 / 2,
          };
          const pair = run({
            ...vented,
            chambers: [chamber],
            parts: [amplifierPart, speakerPart('LS1'), speakerPart('LS2')],
            speakers: [speakerAt('LS1', half, 'low'), speakerAt('LS2', half, 'low')],
          });
          expect(worstRatio(magnitudes(pair.sum), magnitudes(whole.sum))).toBeLessThan(1e-9);
          expect(
            worstRatio(magnitudes(pair.amplifiers[0]!.impedance), magnitudes(whole.amplifiers[0]!.impedance)),
          ).toBeLessThan(1e-9);
        },
      ),
      { seed: 11, numRuns: 25 },
    );
  });

  it('takes a vanishing port for none', () => {
    const sealed = run({ ...vented, ports: [] });
    const pinhole = run({ ...vented, ports: [{ ...vented.ports[0]!, areaM2: 1e-12, loss: null }] });
    expect(worstRatio(magnitudes(pinhole.sum), magnitudes(sealed.sum))).toBeLessThan(1e-6);
  });

  it('takes a passive radiator of infinite compliance and no loss for a port of the same acoustic mass', () => {
    const port = run({ ...vented, ports: [{ ...vented.ports[0]!, loss: null, radiation: pointSource(1.2) }] });
    const massKgPerM4 = (air.densityKgPerM3 * 0.23) / 0.0038;
    const radiator = run({
      ...vented,
      ports: [],
      passiveRadiators: [
        {
          id: 'PR',
          chamberId: 'low',
          sdM2: 0.0038,
          mmsKg: massKgPerM4 * 0.0038 ** 2,
          cmsMPerN: 1e9,
          rmsKgPerS: 1e-12,
          radiation: pointSource(1.2),
        },
      ],
    });
    expect(worstRatio(magnitudes(radiator.sum), magnitudes(port.sum))).toBeLessThan(1e-6);
  });

  it('gives the same result with and without what an earlier run lends', () => {
    const first = run(twoWay);
    const changed: SpeakerModel = {
      ...twoWay,
      parts: twoWay.parts.map((p) => (p.id === 'C2' && p.kind === 'capacitor' ? { ...p, farad: 10e-6 } : p)),
    };
    const fresh = run(changed);
    const lent = simulate(changed, grid, first.solved);
    expect(lent.ok && lent.value.sum).toEqual(fresh.sum);
    expect(fresh.sum).not.toEqual(first.sum);
  });

  it('halves every pressure in full space and turns a reversed driver round', () => {
    const half = run(twoWay);
    const full = run({ ...twoWay, radiation: 'full-space' });
    expect(
      worstRatio(
        magnitudes(full.sum),
        magnitudes(half.sum).map((x) => x / 2),
      ),
    ).toBeLessThan(1e-12);
    const reversed = run({ ...vented, parts: [amplifierPart, speakerPart('LS1', '0', 'in')] });
    const straight = run(vented);
    expect(reversed.sum.re[20]).toBeCloseTo(-straight.sum.re[20]!, 9);
  });
});

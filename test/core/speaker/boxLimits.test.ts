import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { magnitudes } from '../../../src/core/speaker/complexCurve.ts';
import type { DriverParameters, SpeakerModel } from '../../../src/core/speaker/model.ts';
import { pointSource } from '../../../src/core/speaker/pointSource.ts';
import { simulate } from '../../../src/core/speaker/simulate.ts';
import { air, amplifierPart, speakerAt, speakerPart } from './fixture.ts';

const grid = Float64Array.from({ length: 50 }, (_, i) => 12 * 1.15 ** i);
const run = (model: SpeakerModel) => {
  const result = simulate(model, grid);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const worstRatio = (a: Float64Array, b: Float64Array): number =>
  a.reduce((worst, value, i) => Math.max(worst, Math.abs(value / b[i]! - 1)), 0);
const alike = (a: SpeakerModel, b: SpeakerModel): void => {
  const one = run(a);
  const other = run(b);
  expect(worstRatio(magnitudes(one.sum), magnitudes(other.sum))).toBeLessThan(1e-6);
  const [za, zb] = [one, other].map((r) => magnitudes(r.amplifiers[0]!.impedance)) as [Float64Array, Float64Array];
  expect(worstRatio(za, zb)).toBeLessThan(1e-6);
};

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Drivers from a 50 mm mid to a 460 mm woofer. */
const anyDriver: fc.Arbitrary<DriverParameters> = fc
  .record({
    reOhm: between(2.5, 13),
    leH: between(0, 2e-3),
    fsHz: between(16, 120),
    qms: between(1.5, 12),
    qes: between(0.2, 1.5),
    sdM2: between(0.002, 0.13),
    massPerArea: between(0.6, 3),
  })
  .map(({ reOhm, leH, fsHz, qms, qes, sdM2, massPerArea }) => {
    const mmsKg = massPerArea * sdM2;
    const omegaS = 2 * Math.PI * fsHz;
    return {
      reOhm,
      leH,
      semiInductance: null,
      blTm: Math.sqrt((omegaS * mmsKg * reOhm) / qes),
      mmsKg,
      cmsMPerN: 1 / (omegaS ** 2 * mmsKg),
      rmsKgPerS: (omegaS * mmsKg) / qms,
      sdM2,
    };
  });
const anyVolumeM3 = between(0.002, 0.2);

const bare = { air, amplifiers: [{ id: 'V1', voltageV: 2.83, resistanceOhm: 0.1 }], ports: [], passiveRadiators: [] };
const alone = (driver: DriverParameters, chamberId: string | null): Pick<SpeakerModel, 'parts' | 'speakers'> => ({
  parts: [amplifierPart, speakerPart('LS1')],
  speakers: [speakerAt('LS1', driver, chamberId)],
});
const chamber = (volumeM3: number, id = 'low') => ({ id, volumeM3, leak: null, absorption: null });
const check = (seed: number, property: (driver: DriverParameters, volumeM3: number) => void) =>
  fc.assert(fc.property(anyDriver, anyVolumeM3, property), { seed, numRuns: 60 });

describe('limits of a box, random drivers and volumes', () => {
  it('an infinitely leaky box is an open back (seed 41)', () => {
    check(41, (driver, volumeM3) => {
      const leaky = { ...chamber(volumeM3), leak: { q: 1e-12, atHz: 40 } };
      const open: SpeakerModel = { ...bare, ...alone(driver, null), chambers: [], radiation: 'half-space' };
      alike({ ...bare, ...alone(driver, 'low'), chambers: [leaky], radiation: 'half-space' }, open);
    });
  });

  it('a vanishing port is a sealed box (seed 42)', () => {
    check(42, (driver, volumeM3) => {
      const sealed: SpeakerModel = {
        ...bare,
        ...alone(driver, 'low'),
        chambers: [chamber(volumeM3)],
        radiation: 'half-space',
      };
      const port = {
        id: 'P1',
        chamberId: 'low',
        areaM2: 1e-13,
        effectiveLengthM: 0.2,
        loss: null,
        radiation: pointSource(1),
      };
      alike({ ...sealed, ports: [port] }, sealed);
    });
  });

  it('a passive radiator of infinite compliance is a port of its acoustic mass (seed 43)', () => {
    check(43, (driver, volumeM3) => {
      const model: SpeakerModel = {
        ...bare,
        ...alone(driver, 'low'),
        chambers: [chamber(volumeM3)],
        radiation: 'half-space',
      };
      const areaM2 = driver.sdM2 / 3;
      const place = { chamberId: 'low', radiation: pointSource(1.3) };
      const port = { id: 'P1', areaM2, effectiveLengthM: 0.25, loss: null, ...place };
      const mmsKg = air.densityKgPerM3 * 0.25 * areaM2;
      const radiator = { id: 'R1', sdM2: areaM2, mmsKg, cmsMPerN: 1e12, rmsKgPerS: 0, ...place };
      alike({ ...model, passiveRadiators: [radiator] }, { ...model, ports: [port] });
    });
  });

  it('two woofers of half the area are one whole, in parallel and in series (seed 44)', () => {
    check(44, (driver, volumeM3) => {
      const whole: SpeakerModel = {
        ...bare,
        ...alone(driver, 'low'),
        chambers: [chamber(volumeM3)],
        radiation: 'half-space',
      };
      const half = (coil: number): DriverParameters => ({
        ...driver,
        reOhm: driver.reOhm * coil,
        leH: driver.leH * coil,
        blTm: driver.blTm * (coil === 2 ? 1 : 0.5),
        mmsKg: driver.mmsKg / 2,
        cmsMPerN: 2 * driver.cmsMPerN,
        rmsKgPerS: driver.rmsKgPerS / 2,
        sdM2: driver.sdM2 / 2,
      });
      const pair = (coil: number) => [speakerAt('LS1', half(coil), 'low'), speakerAt('LS2', half(coil), 'low')];
      alike({ ...whole, parts: [amplifierPart, speakerPart('LS1'), speakerPart('LS2')], speakers: pair(2) }, whole);
      alike(
        {
          ...whole,
          parts: [amplifierPart, speakerPart('LS1', 'in', 'between'), speakerPart('LS2', 'between', '0')],
          speakers: pair(0.5),
        },
        whole,
      );
    });
  });

  it('an isobaric pair halves Vas: half the box, twice the motor, the same alignment (seed 45)', () => {
    check(45, (driver, volumeM3) => {
      // The coupling chamber must be small for the two cones to move as one: 1e-9 of the box.
      const pair: SpeakerModel = {
        ...bare,
        parts: [amplifierPart, speakerPart('LS1'), speakerPart('LS2')],
        speakers: [
          speakerAt('LS1', driver, 'coupling'),
          { ...speakerAt('LS2', driver, 'low'), frontChamberId: 'coupling' },
        ],
        chambers: [chamber(1e-9 * volumeM3, 'coupling'), chamber(volumeM3 / 2)],
        radiation: 'half-space',
      };
      const single = run({
        ...bare,
        ...alone(driver, 'low'),
        chambers: [chamber(volumeM3)],
        amplifiers: ideal,
        radiation: 'half-space',
      });
      const both = run({ ...pair, amplifiers: ideal });
      const low = grid.filter((hz) => hz < 300).length;
      const cut = (curve: Float64Array) => curve.subarray(0, low);
      expect(worstRatio(cut(magnitudes(both.sum)), cut(magnitudes(single.sum)))).toBeLessThan(1e-6);
      const half = magnitudes(single.amplifiers[0]!.impedance).map((ohm) => ohm / 2);
      expect(worstRatio(cut(magnitudes(both.amplifiers[0]!.impedance)), cut(half))).toBeLessThan(1e-6);
    });
  });
});

const ideal = [{ id: 'V1', voltageV: 2.83, resistanceOhm: 0 }];

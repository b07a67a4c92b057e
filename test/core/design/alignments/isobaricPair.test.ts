import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driverFigures } from '../../../../src/core/acoustics/index.ts';
import { isobaricPair } from '../../../../src/core/design/alignments/index.ts';
import {
  type DriverParameters,
  type ModelSpeaker,
  magnitudes,
  parseNetlist,
  pointSource,
  type SpeakerModel,
  simulate,
} from '../../../../src/core/index.ts';
import { AIR } from '../../acoustics/sweep.ts';

const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const drivers: fc.Arbitrary<DriverParameters> = fc.record({
  reOhm: number(3, 12),
  leH: number(0, 2e-3),
  semiInductance: fc.constantFrom(null, { kOhmSn: 0.02, exponent: 0.6 }),
  blTm: number(3, 15),
  mmsKg: number(0.01, 0.1),
  cmsMPerN: number(2e-4, 2e-3),
  rmsKgPerS: number(0.5, 5),
  sdM2: number(0.01, 0.06),
});
const frequencies = Float64Array.from([25, 60, 140, 700]);

const speaker = (partId: string, parameters: DriverParameters, rest: Partial<ModelSpeaker>): ModelSpeaker => ({
  partId,
  parameters,
  chamberId: null,
  radiation: pointSource(1),
  measured: null,
  ...rest,
});

const solve = (netlist: string, speakers: readonly ModelSpeaker[], between: number | null) => {
  const read = parseNetlist(netlist);
  if (!read.ok) throw new Error('netlist');
  const model: SpeakerModel = {
    air: AIR,
    amplifiers: [{ id: 'V1', voltageV: 2.83, resistanceOhm: 0.1 }],
    parts: read.value,
    speakers,
    chambers: [
      { id: 'box', volumeM3: 0.03, leak: { q: 10, atHz: 50 }, absorption: null },
      ...(between === null ? [] : [{ id: 'between', volumeM3: between, leak: null, absorption: null }]),
    ],
    ports: [],
    passiveRadiators: [],
    radiation: 'half-space',
  };
  const result = simulate(model, frequencies);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

const NETLISTS = {
  parallel: 'V1 in 0\nLS1 in 0 a\nLS2 in 0 a',
  series: 'V1 in 0\nLS1 in mid a\nLS2 mid 0 a',
} as const;

describe('isobaricPair', () => {
  it('is two drivers one behind the other with hardly any air between: pressure and impedance to 1e-5 (seed 86)', () => {
    fc.assert(
      fc.property(drivers, fc.constantFrom('parallel', 'series'), (driver, wiring) => {
        const outer = speaker('LS1', driver, { chamberId: 'between' });
        const inner = speaker('LS2', driver, { chamberId: 'box', frontChamberId: 'between' });
        const pair = solve(NETLISTS[wiring], [outer, inner], 1e-9);
        const one = solve(
          'V1 in 0\nLS1 in 0 a',
          [speaker('LS1', isobaricPair(driver, wiring), { chamberId: 'box' })],
          null,
        );
        frequencies.forEach((_, i) => {
          expect(Math.abs(magnitudes(pair.sum)[i]! / magnitudes(one.sum)[i]! - 1)).toBeLessThan(1e-5);
          const [of, by] = [pair, one].map((s) => magnitudes(s.amplifiers[0]!.impedance)[i]!);
          expect(Math.abs(of! / by! - 1)).toBeLessThan(1e-5);
        });
      }),
      { seed: 86, numRuns: 40 },
    );
  });

  it('halves Vas and keeps fs and every Q (seed 87)', () => {
    fc.assert(
      fc.property(drivers, fc.constantFrom('parallel', 'series'), (driver, wiring) => {
        const [one, pair] = [driver, isobaricPair(driver, wiring)].map((d) => driverFigures(d, AIR));
        expect(pair!.vasM3 / one!.vasM3).toBeCloseTo(0.5, 12);
        for (const key of ['fsHz', 'qms', 'qes', 'qts'] as const) expect(pair![key] / one![key]).toBeCloseTo(1, 12);
      }),
      { seed: 87 },
    );
  });

  it('with 2 L between, the cones differ by a few per cent at 60 Hz (physics notes, 5.2: 3 % for its driver)', () => {
    const driver = {
      reOhm: 5.6,
      leH: 0,
      semiInductance: null,
      blTm: 9.2,
      mmsKg: 0.03,
      cmsMPerN: 7e-4,
      rmsKgPerS: 1.5,
      sdM2: 0.022,
    };
    const outer = speaker('LS1', driver, { chamberId: 'between' });
    const inner = speaker('LS2', driver, { chamberId: 'box', frontChamberId: 'between' });
    const { speakers } = solve(NETLISTS.parallel, [outer, inner], 0.002);
    const [a, b] = speakers.map(({ volumeVelocity }) => magnitudes(volumeVelocity)[1]!);
    expect(Math.abs(a! / b! - 1)).toBeGreaterThan(0.005);
    expect(Math.abs(a! / b! - 1)).toBeLessThan(0.06);
  });
});

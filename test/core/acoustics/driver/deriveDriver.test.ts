import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DriverEntered,
  type DriverParameters,
  deriveDriver,
  driverFigures,
} from '../../../../src/core/acoustics/index.ts';
import { word } from '../../../../src/core/messages/index.ts';
import { AIR } from '../sweep.ts';

const parametersOf = (entered: DriverEntered): DriverParameters => {
  const driver = deriveDriver(entered, AIR);
  if (!driver.ok) throw new Error(JSON.stringify(driver.problems));
  return driver.value.parameters;
};

const log = (least: number, most: number) =>
  fc.double({ min: Math.log(least), max: Math.log(most), noNaN: true }).map(Math.exp);
const anyDriver: fc.Arbitrary<DriverParameters> = fc.record({
  reOhm: log(2, 15),
  leH: fc.constant(0),
  semiInductance: fc.constant(null),
  blTm: log(1, 30),
  mmsKg: log(2e-4, 0.3),
  cmsMPerN: log(2e-5, 5e-3),
  rmsKgPerS: log(0.05, 20),
  sdM2: log(4e-4, 0.15),
});

/** Every way in which the trade gives a driver; each fixes all of it. */
const WAYS: readonly (readonly (keyof DriverEntered)[])[] = [
  ['reOhm', 'fsHz', 'qms', 'qes', 'vasM3', 'sdM2'],
  ['reOhm', 'fsHz', 'qms', 'qts', 'vasM3', 'sdM2'],
  ['reOhm', 'fsHz', 'qes', 'qts', 'vasM3', 'sdM2'],
  ['reOhm', 'fsHz', 'qms', 'qes', 'mmsKg', 'sdM2'],
  ['reOhm', 'fsHz', 'qms', 'qes', 'cmsMPerN', 'sdM2'],
  ['reOhm', 'fsHz', 'qms', 'qes', 'blTm', 'sdM2'],
  ['reOhm', 'blTm', 'mmsKg', 'cmsMPerN', 'rmsKgPerS', 'sdM2'],
  ['reOhm', 'blTm', 'mmsKg', 'cmsMPerN', 'qms', 'sdM2'],
  ['reOhm', 'blTm', 'mmsKg', 'fsHz', 'rmsKgPerS', 'vasM3'],
  ['reOhm', 'blTm', 'mmsKg', 'fsHz', 'qts', 'sdM2'],
  ['reOhm', 'blTm', 'vasM3', 'sdM2', 'qes', 'qms'],
  ['reOhm', 'blTm', 'rmsKgPerS', 'qts', 'mmsKg', 'sdM2'],
  ['reOhm', 'blTm', 'rmsKgPerS', 'qts', 'cmsMPerN', 'sdM2'],
  ['reOhm', 'blTm', 'rmsKgPerS', 'qts', 'fsHz', 'vasM3', 'sdM2'],
  ['blTm', 'qes', 'qms', 'fsHz', 'mmsKg', 'sdM2'],
  ['reOhm', 'fsHz', 'qms', 'qes', 'vasM3', 'mmsKg'],
];

describe('deriveDriver', () => {
  it('reads a mechanical set through unchanged and derives the worked numbers (reference notes, ts-full-1)', () => {
    const driver = deriveDriver(
      { reOhm: 6.2, blTm: 7.5, mmsKg: 0.022, cmsMPerN: 9e-4, rmsKgPerS: 1.1, sdM2: 0.0216 },
      AIR,
    );
    expect(driver.ok).toBe(true);
    if (!driver.ok) return;
    expect(driver.value.findings).toEqual([]);
    expect(driver.value.derived.fsHz).toBeCloseTo(35.7674, 4);
    expect(driver.value.derived.qts).toBeCloseTo(0.486025, 6);
    expect(driver.value.derived.vasM3).toBeCloseTo(0.0595535, 7);
    expect(driver.value.derived.sensitivityDb2V83).toBeCloseTo(90.154, 3);
  });

  for (const way of WAYS) {
    it(`gets the whole driver back from ${way.join(', ')} (seed 61)`, () => {
      fc.assert(
        fc.property(anyDriver, (driver) => {
          const all: Record<string, unknown> = { ...driverFigures(driver, AIR), ...driver };
          const entered = Object.fromEntries(way.map((field) => [field, all[field]])) as DriverEntered;
          const found = parametersOf(entered);
          for (const key of ['reOhm', 'blTm', 'mmsKg', 'cmsMPerN', 'rmsKgPerS', 'sdM2'] as const) {
            // 1/Qts − 1/Qms cancels digits where one Q rules the other.
            expect(Math.abs(found[key] / driver[key] - 1), key).toBeLessThan(1e-6);
          }
        }),
        { seed: 61, numRuns: 60 },
      );
    });
  }

  it('takes the same driver from all numbers at once, without a finding (seed 62)', () => {
    fc.assert(
      fc.property(anyDriver, (driver) => {
        const { fsHz, qms, qes, qts, vasM3, sensitivityDb2V83 } = driverFigures(driver, AIR);
        const { leH: _le, semiInductance: _semi, ...mechanical } = driver;
        const found = deriveDriver({ ...mechanical, fsHz, qms, qes, qts, vasM3, sensitivityDb2V83 }, AIR);
        expect(found.ok && found.value.findings.length === 0).toBe(true);
      }),
      { seed: 62 },
    );
  });

  it('passes coil inductance through', () => {
    const semiInductance = { kOhmSn: 0.012, exponent: 0.65 };
    const entered = {
      reOhm: 6.2,
      blTm: 7.5,
      mmsKg: 0.022,
      cmsMPerN: 9e-4,
      rmsKgPerS: 1.1,
      sdM2: 0.0216,
      leH: 3e-4,
      semiInductance,
    };
    expect(parametersOf(entered).leH).toBe(3e-4);
    expect(parametersOf(entered).semiInductance).toEqual(semiInductance);
  });

  it('turns Vas into compliance with the air of the sheet, not with any other', () => {
    const entered = { reOhm: 6, fsHz: 30, qms: 4, qes: 0.4, vasM3: 0.08, sdM2: 0.03 };
    const thin = deriveDriver(entered, { densityKgPerM3: 1.1, soundSpeedMPerS: 350 });
    expect(thin.ok && thin.value.parameters.cmsMPerN).toBeCloseTo(0.08 / (1.1 * 350 ** 2 * 0.03 ** 2), 12);
    expect(thin.ok && thin.value.derived.vasM3).toBeCloseTo(0.08, 12);
  });

  const complete = { reOhm: 6.2, fsHz: 35.77, qms: 4.495, qes: 0.545, sdM2: 0.0216, mmsKg: 0.022 };

  it('accepts what a sheet rounds, up to 3 %', () => {
    const rounded = deriveDriver({ ...complete, qts: 0.49, vasM3: 0.061, blTm: 7.4 }, AIR);
    expect(rounded.ok && rounded.value.findings).toEqual([]);
  });

  it('names both numbers of a contradiction and which was used', () => {
    const driver = deriveDriver({ ...complete, vasM3: 0.08 }, AIR);
    expect(driver.ok).toBe(true);
    if (!driver.ok) return;
    const [finding] = driver.value.findings;
    expect(finding).toMatchObject({
      code: 'acoustics.sheet-contradiction',
      severity: 'warning',
      place: { kind: 'driver', field: 'vasM3' },
    });
    expect(finding!.values.entered).toBe(0.08);
    expect(finding!.values.derived).toBeCloseTo(0.05955, 4);
    expect(driver.value.parameters.mmsKg).toBe(0.022);
    expect(driver.value.derived.vasM3).toBeCloseTo(0.05955, 4);
    expect(word(finding!).sentence).toBe('The driver has Vas = 80 L, but Sd, fs, Mms give 59.5 L; the latter is used.');
  });

  it('finds an altered number among all of them, whichever it is, unless it is the one relied on (seed 63)', () => {
    const fields = ['qts', 'blTm', 'cmsMPerN', 'vasM3', 'rmsKgPerS'] as const;
    fc.assert(
      fc.property(anyDriver, fc.constantFrom(...fields), fc.constantFrom(0.9, 1.08), (driver, field, factor) => {
        const { fsHz, qms, qes, qts, vasM3 } = driverFigures(driver, AIR);
        const { leH: _le, semiInductance: _semi, ...mechanical } = driver;
        const all = { ...mechanical, fsHz, qms, qes, qts, vasM3 };
        const found = deriveDriver({ ...all, [field]: all[field] * factor }, AIR);
        expect(found.ok && found.value.findings.map((finding) => finding.values.field)).toEqual([field]);
      }),
      { seed: 63 },
    );
  });

  it('notes a sensitivity that the other numbers do not give', () => {
    const driver = deriveDriver({ ...complete, sensitivityDb2V83: 94 }, AIR);
    expect(driver.ok && driver.value.findings.map(({ code, severity }) => [code, severity])).toEqual([
      ['acoustics.sheet-sensitivity', 'note'],
    ]);
    if (driver.ok)
      expect(word(driver.value.findings[0]!).sentence).toContain(
        '94 dB for 2.83 V at 1 m, but its other numbers give 90.2 dB',
      );
    expect(deriveDriver({ ...complete, sensitivityDb2V83: 91.5 }, AIR)).toMatchObject({
      ok: true,
      value: { findings: [] },
    });
  });

  it('says which numbers are missing and which one more would do', () => {
    const driver = deriveDriver({ reOhm: 6.2, fsHz: 35.77, qms: 4.495, qes: 0.545, sdM2: 0.0216 }, AIR);
    expect(driver.ok).toBe(false);
    if (driver.ok) return;
    const { sentence, remedy } = word(driver.problems[0]!);
    expect(sentence).toBe(
      'The driver is not fully known: Mms, Bl, Cms, Rms cannot be worked out from what is entered.',
    );
    expect(remedy).toBe('Enter one more of these: Mms, Bl, Cms, Vas, Rms.');
    for (const [field, value] of [
      ['mmsKg', 0.022],
      ['blTm', 7.5],
      ['cmsMPerN', 9e-4],
      ['vasM3', 0.06],
      ['rmsKgPerS', 1.1],
    ] as const) {
      expect(
        deriveDriver({ reOhm: 6.2, fsHz: 35.77, qms: 4.495, qes: 0.545, sdM2: 0.0216, [field]: value }, AIR).ok,
        field,
      ).toBe(true);
    }
  });

  it('names the usual set where no single number would do', () => {
    const driver = deriveDriver({ reOhm: 6.2 }, AIR);
    expect(!driver.ok && driver.problems[0]!.values.oneMoreOf).toBe('');
    if (!driver.ok)
      expect(word(driver.problems[0]!).remedy).toBe('Enter Re, Sd, fs, Qes, Qms and one of Vas, Mms or Bl.');
  });

  it('refuses a Qts that is not below Qms, and numbers no driver can have', () => {
    const crossed = deriveDriver({ reOhm: 6.2, fsHz: 35, qms: 0.4, qts: 0.5, vasM3: 0.06, sdM2: 0.0216 }, AIR);
    expect(crossed.ok ? [] : crossed.problems.map(({ code }) => code)).toEqual(['acoustics.driver-impossible']);
    if (!crossed.ok)
      expect(word(crossed.problems[0]!).sentence).toBe(
        'The driver cannot have these numbers together: Qms, Qts leave no possible Qes.',
      );
    const negative = deriveDriver({ ...complete, sdM2: -1, reOhm: Number.NaN }, AIR);
    expect(!negative.ok && negative.problems.map(({ place }) => place.field)).toEqual(['reOhm', 'sdM2']);
    if (!negative.ok)
      expect(word(negative.problems[1]!).sentence).toBe('The driver has Sd = −10000 cm², which no driver can have.');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chamberAdmittance,
  chamberComplianceM3PerPa,
  type FibreFill,
  type FilledChamber,
  fibreFluid,
  fillEffect,
  filledChamberAdmittance,
  fillVolumeFactor,
  thermalCornerHz,
  wallLiningAdmittance,
  wallLiningVolumeM3,
} from '../../../../src/core/acoustics/index.ts';
import { add, complex, divide, multiply, reciprocal, scale } from '../../../../src/core/math/index.ts';
import { apart, omegaOf, STILL_AIR } from '../duct/integrate.ts';
import { admittanceAt } from '../sweep.ts';

const AIR = STILL_AIR;
const fillOf = (sigma: number, bulk = 10): FibreFill => ({
  resistivityPaSPerM2: sigma,
  bulkDensityKgPerM3: bulk,
  solidDensityKgPerM3: 1380,
  solidHeatJPerKgK: 1150,
  thermalCornerHz: thermalCornerHz(sigma, AIR).usual,
});
const box = (changes: Partial<FilledChamber> = {}): FilledChamber => ({
  volumeM3: 0.03,
  fill: fillOf(660),
  share: 1,
  depthM: 0.25,
  held: true,
  absorption: null,
  ...changes,
});
const size = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });

describe('filledChamberAdmittance', () => {
  it('without stuffing is the plain chamber, with its stated loss too', () => {
    for (const absorption of [null, { q: 60, atHz: 38 }]) {
      const got = admittanceAt(filledChamberAdmittance(box({ share: 0, absorption }), AIR), [20, 90, 400]);
      const wanted = admittanceAt(chamberAdmittance({ volumeM3: 0.03, absorption }, AIR), [20, 90, 400]);
      got.forEach((y, i) => {
        expect(apart(y, wanted[i]!)).toBeLessThan(1e-13);
      });
    }
  });

  it('never gives power, nor more than the isothermal volume or less than what the fibres leave (seed 66)', () => {
    fc.assert(
      fc.property(
        size(30, 3e4),
        size(1, 50),
        size(0, 1),
        size(0.05, 1),
        size(3, 3000),
        fc.boolean(),
        (sigma, bulk, share, depthM, f, held) => {
          const chamber = box({ fill: fillOf(sigma, bulk), share, depthM, held });
          const [y] = admittanceAt(filledChamberAdmittance(chamber, AIR), [f]);
          expect(y!.re).toBeGreaterThanOrEqual(0);
          const effect = fillEffect(chamber, AIR, omegaOf(f));
          expect(effect.volumeGain).toBeLessThan(1.401);
        },
      ),
      { seed: 66 },
    );
  });

  it('is the filled line with a hard end, less the air’s own mass: within 1 % at 40 Hz, 5 % at 80 Hz', () => {
    for (const [sigma, depthM] of [
      [660, 0.25],
      [1600, 0.25],
      [5000, 0.25],
      [1500, 0.5],
    ] as const) {
      const fluid = fibreFluid(fillOf(sigma), true, AIR);
      const areaM2 = 0.03 / depthM;
      for (const [f, tolerance] of [
        [20, 0.01],
        [40, 0.01],
        [80, 0.05],
      ] as const) {
        const omega = omegaOf(f);
        const { densityKgPerM3, modulusPa } = fluid(omega);
        // x coth x = 1 + x²/(3 + x²/(5 + x²/(7 + x²/(9 + x²/11)))), x = ΓL.
        const square = scale(divide(densityKgPerM3, modulusPa), -((omega * depthM) ** 2));
        const tail = [9, 7, 5, 3].reduce((inner, n) => add(complex(n), divide(square, inner)), complex(11));
        const spring = divide(modulusPa, complex(0, omega * areaM2 * depthM));
        const exact = multiply(spring, add(complex(1), divide(square, tail)));
        const airMass = (omega * AIR.densityKgPerM3 * depthM) / (3 * areaM2);
        const chamber = box({ fill: fillOf(sigma), depthM });
        const [got] = admittanceAt(filledChamberAdmittance(chamber, AIR), [f]);
        const wanted = reciprocal({ re: exact.re, im: exact.im - airMass });
        expect(apart(got!, wanted), `σ ${sigma}, ${depthM} m, ${f} Hz`).toBeLessThan(tolerance);
      }
    }
  });

  it('gains volume and damping from the same σ: at 40 Hz both rise together while the air still moves freely', () => {
    const effects = [50, 200, 500, 1000].map((sigma) => fillEffect(box({ fill: fillOf(sigma) }), AIR, omegaOf(40)));
    for (let i = 1; i < effects.length; i++) {
      expect(effects[i]!.volumeGain).toBeGreaterThan(effects[i - 1]!.volumeGain);
    }
    const [thin, thick] = [effects[0]!, effects[3]!];
    expect(thin.airQ).toBeGreaterThan(thick.airQ);
    expect(thick.volumeGain).toBeGreaterThan(1.25);
  });

  it('keeps the loss that heat alone makes where nothing rubs (no depth), and adds σ t/(3S) where it does', () => {
    const compliance = chamberComplianceM3PerPa(0.03, AIR);
    const omega = omegaOf(50);
    const [still] = admittanceAt(filledChamberAdmittance(box({ depthM: 0 }), AIR), [50]);
    const factor = fillVolumeFactor(fillOf(660), AIR, omega);
    expect(apart(still!, multiply(complex(0, omega * compliance), factor))).toBeLessThan(1e-13);
    const [rubbing] = admittanceAt(filledChamberAdmittance(box(), AIR), [50]);
    const added = reciprocal(rubbing!).re - reciprocal(still!).re;
    // Area 0.12 m², depth 0.25 m.
    expect(added).toBeCloseTo((660 * 0.25) / (3 * 0.12), 6);
  });

  it('a share is that share of the chamber: half the gain within 1 % where friction is small', () => {
    const [half, whole] = [0.5, 1].map(
      (share) => fillEffect(box({ share, depthM: 0.02 }), AIR, omegaOf(30)).volumeGain - 1,
    );
    expect(half! / whole!).toBeCloseTo(0.5, 2);
  });

  it('free fibres follow the air at low frequency and rub less', () => {
    const loss = (held: boolean, f: number): number => {
      const [y] = admittanceAt(filledChamberAdmittance(box({ fill: fillOf(2000), held }), AIR), [f]);
      return reciprocal(y!).re;
    };
    expect(loss(false, 5)).toBeLessThan(loss(true, 5));
    expect(loss(false, 2000) / loss(true, 2000)).toBeCloseTo(1, 2);
  });
});

describe('wallLiningAdmittance', () => {
  const lining = { areaM2: 0.5, thicknessM: 0.03, fluid: fibreFluid(fillOf(3000, 20), true, AIR) };

  it('while thin is a compliance of its volume with the gain of its fluid', () => {
    const omega = omegaOf(20);
    const [y] = admittanceAt(wallLiningAdmittance(lining), [20]);
    const plain = chamberComplianceM3PerPa(wallLiningVolumeM3(lining), AIR);
    const wanted = multiply(complex(0, omega * plain), fillVolumeFactor(fillOf(3000, 20), AIR, omega));
    expect(apart(y!, wanted)).toBeLessThan(5e-3);
  });

  it('is a ladder of 3000 slices with a hard wall behind', () => {
    for (const f of [50, 500, 4000]) {
      const omega = omegaOf(f);
      const { densityKgPerM3, modulusPa } = lining.fluid(omega);
      const step = lining.thicknessM / 3000;
      const series = scale(multiply(complex(0, omega), densityKgPerM3), step / lining.areaM2);
      const spring = scale(divide(complex(0, omega), modulusPa), step * lining.areaM2);
      let y = complex(0);
      for (let n = 0; n < 3000; n++) {
        y = add(y, scale(spring, 0.5));
        y = add(reciprocal(add(series, reciprocal(y))), scale(spring, 0.5));
      }
      expect(apart(admittanceAt(wallLiningAdmittance(lining), [f])[0]!, y)).toBeLessThan(1e-6);
    }
  });

  it('takes power at all frequencies (seed 67)', () => {
    fc.assert(
      fc.property(size(100, 5e4), size(0.005, 0.2), size(5, 2e4), (sigma, thicknessM, f) => {
        const layer = { areaM2: 0.5, thicknessM, fluid: fibreFluid(fillOf(sigma), false, AIR) };
        expect(admittanceAt(wallLiningAdmittance(layer), [f])[0]!.re).toBeGreaterThan(0);
      }),
      { seed: 67 },
    );
  });
});

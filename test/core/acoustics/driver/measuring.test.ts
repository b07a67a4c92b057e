import { describe, expect, it } from 'vitest';
import {
  chamberComplianceM3PerPa,
  type DriverParameters,
  discAreaM2,
  driverFigures,
  efficiencyBandwidthHz,
  efficiencyFactor,
  efficiencyFromVas,
  halfSpaceConstantDb,
  movingMassFromAddedMass,
  movingPartsAdmittance,
  peakImpedanceOhm,
  powerFromDisplacementW,
  pressureFromDisplacementPa,
  referenceEfficiency,
  sensitivityDb,
  threePointImpedance,
  totalQ,
  vasFromTestBoxM3,
  volumeDisplacementM3,
} from '../../../../src/core/acoustics/index.ts';
import { findMinimum, findRoot } from '../../../../src/core/math/index.ts';
import { AIR, admittanceAt } from '../sweep.ts';

const driver: DriverParameters = {
  reOhm: 6.2,
  leH: 0,
  semiInductance: null,
  blTm: 7.5,
  mmsKg: 0.022,
  cmsMPerN: 9e-4,
  rmsKgPerS: 1.1,
  sdM2: 0.0216,
};
const figures = driverFigures(driver, AIR);

/** |Z| of the driver in air as the branches make it: Re + (Bl/Sd)² Y. */
const impedanceOhm = (parts: DriverParameters, f: number): number => {
  const [y] = admittanceAt(movingPartsAdmittance(parts), [f]);
  const ratio = (parts.blTm / parts.sdM2) ** 2;
  return Math.hypot(parts.reOhm + ratio * y!.re, ratio * y!.im);
};

describe('driverFigures', () => {
  it('agree with the branch’s own impedance: peak at fs of height Zmax, and the widths that Qms and Qes claim', () => {
    const peak = findMinimum((f) => -impedanceOhm(driver, f), 10, 100, 1e-9);
    expect(peak.x).toBeCloseTo(figures.fsHz, 5);
    expect(-peak.value).toBeCloseTo(figures.zMaxOhm, 8);
    expect(peakImpedanceOhm(driver.reOhm, figures.qms, figures.qes)).toBeCloseTo(figures.zMaxOhm, 10);
    const side = Math.sqrt(driver.reOhm * figures.zMaxOhm);
    const lower = findRoot((f) => impedanceOhm(driver, f) - side, 5, figures.fsHz, 1e-10).x;
    const upper = findRoot((f) => impedanceOhm(driver, f) - side, figures.fsHz, 300, 1e-10).x;
    const found = threePointImpedance(driver.reOhm, figures.zMaxOhm, lower, upper);
    expect(found.fsHz).toBeCloseTo(figures.fsHz, 8);
    expect(found.qms).toBeCloseTo(figures.qms, 8);
    expect(found.qes).toBeCloseTo(figures.qes, 8);
    expect(found.qts).toBeCloseTo(figures.qts, 8);
    expect(found.sideOhm).toBeCloseTo(side, 10);
  });

  it('have two forms of efficiency that agree, and the trade’s rules among the Qs', () => {
    expect(
      efficiencyFromVas(figures.fsHz, figures.vasM3, figures.qes, AIR.soundSpeedMPerS) / figures.efficiency,
    ).toBeCloseTo(1, 12);
    expect(referenceEfficiency(driver, AIR)).toBe(figures.efficiency);
    expect(totalQ(figures.qms, figures.qes)).toBeCloseTo(figures.qts, 12);
    expect(efficiencyBandwidthHz(figures.fsHz, figures.qes)).toBeCloseTo(figures.efficiencyBandwidthHz, 12);
    expect(1 / (2 * Math.PI * Math.sqrt(figures.cmesF * figures.lcesH))).toBeCloseTo(figures.fsHz, 10);
  });

  it('reproduce a printed sheet: 105 mm, 9.3 g, 5.13 T·m (reference notes, ts-sheet-A: fs 60.9, Qts 0.643, 85.3 dB)', () => {
    const air = { densityKgPerM3: 1.18, soundSpeedMPerS: 345 };
    const printed = driverFigures(
      {
        ...driver,
        reOhm: 5.9,
        blTm: 5.13,
        mmsKg: 9.3e-3,
        cmsMPerN: 0.735e-3,
        sdM2: discAreaM2(0.105),
        rmsKgPerS: 1.062,
      },
      air,
    );
    expect(Math.abs(printed.fsHz / 60.9 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(printed.qts / 0.643 - 1)).toBeLessThan(3e-3);
    expect(Math.abs(printed.vasM3 / 7.74e-3 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(printed.sensitivityDb1W - 85.3)).toBeLessThan(0.1);
  });

  it('give the level that a voltage makes in the mass-controlled range', () => {
    // p = ρ/(2π) · Sd · a, a = Bl V/(Re Mms): √8 V.
    const pressure =
      (AIR.densityKgPerM3 * driver.sdM2 * driver.blTm * Math.sqrt(8)) / (2 * Math.PI * driver.reOhm * driver.mmsKg);
    expect(figures.sensitivityDb2V83).toBeCloseTo(20 * Math.log10(pressure / 20e-6), 10);
  });

  it('stand on the constants 112.1 dB and 5.445e-4 (R. H. Small; encyclopedia as quoted in the reference notes)', () => {
    expect(Math.abs(halfSpaceConstantDb({ densityKgPerM3: 1.18, soundSpeedMPerS: 345 }) - 112.1)).toBeLessThan(0.01);
    expect(Math.abs(efficiencyFactor({ densityKgPerM3: 1.1843, soundSpeedMPerS: 346.147 }) - 5.445e-4)).toBeLessThan(
      1e-7,
    );
    expect(sensitivityDb(0.01, 112.1)).toBeCloseTo(92.1, 10);
  });
});

describe('finding Mms and Vas', () => {
  it('added mass gives back the mass whose resonance it moves', () => {
    const loaded = driverFigures({ ...driver, mmsKg: driver.mmsKg + 0.015 }, AIR).fsHz;
    const found = movingMassFromAddedMass(figures.fsHz, loaded, 0.015);
    expect(found.mmsKg).toBeCloseTo(driver.mmsKg, 10);
    expect(found.cmsMPerN).toBeCloseTo(driver.cmsMPerN, 12);
    expect(() => movingMassFromAddedMass(30, 31, 0.01)).toThrow(RangeError);
  });

  it('a test box gives back Vas, also when the air load differs in the box', () => {
    const box = 0.02;
    const stiffness = 1 / driver.cmsMPerN + driver.sdM2 ** 2 / chamberComplianceM3PerPa(box, AIR);
    const boxed = driverFigures({ ...driver, cmsMPerN: 1 / stiffness, mmsKg: driver.mmsKg * 1.07 }, AIR);
    const measured = { fsHz: figures.fsHz, qes: figures.qes, fctHz: boxed.fsHz, qect: boxed.qes };
    expect(vasFromTestBoxM3(measured, box)).toBeCloseTo(figures.vasM3, 10);
  });
});

describe('displacement', () => {
  it('makes the pressure of its volume acceleration, half of it in full space, and the matching power', () => {
    const vd = volumeDisplacementM3(0.0216, 0.006);
    const pressure = pressureFromDisplacementPa(vd, 40, 1, AIR.densityKgPerM3, 'half');
    expect(Math.abs(20 * Math.log10(pressure / 20e-6) - 94.88)).toBeLessThan(0.01);
    expect(pressureFromDisplacementPa(vd, 40, 1, AIR.densityKgPerM3, 'full')).toBeCloseTo(pressure / 2, 12);
    // Intensity p²/ρc over a half sphere.
    const power = (2 * Math.PI * pressure ** 2) / (AIR.densityKgPerM3 * AIR.soundSpeedMPerS);
    expect(powerFromDisplacementW(vd, 40, AIR)).toBeCloseTo(power, 12);
  });
});

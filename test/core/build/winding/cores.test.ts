import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CORE_MATERIALS,
  coredCoilFigures,
  coredInductanceH,
  currentAtDropA,
  describingInductanceH,
  gapForM,
  incrementalInductanceH,
  kneeFromRatingA,
  peakFluxT,
  reluctancePerH,
  saturationCurrentA,
  thirdHarmonicRatio,
} from '../../../../src/core/build/winding/index.ts';

const coil = { turns: 120, areaM2: 2.5e-4, coreLengthM: 0.09, gapM: 0.5e-3, relativePermeability: 2000 };
const loss = { kWPerM3: 3, frequencyPower: 1.2, fluxPower: 2 };

describe('cored coil', () => {
  it('is that of the worked example: 8.3 mH, 1.38 T and 0.51 W at 5 A peak and 1 kHz', () => {
    const figures = coredCoilFigures(coil, loss, 5, 1000);
    expect(figures.henry).toBeCloseTo(8.30072e-3, 8);
    expect(figures.peakFluxT).toBeCloseTo(1.383454, 6);
    expect(figures.lossW).toBeCloseTo(0.5143195, 6);
  });
  it('puts the same power into its series resistance, and its two resistances multiply to (ωL)² (seed 94)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 6, noNaN: true }),
        fc.double({ min: 100, max: 5000, noNaN: true }),
        fc.double({ min: 1.6, max: 2.8, noNaN: true }),
        (peakA, hz, fluxPower) => {
          const figures = coredCoilFigures(coil, { ...loss, fluxPower }, peakA, hz);
          expect((peakA ** 2 * figures.seriesOhm) / 2 / figures.lossW).toBeCloseTo(1, 10);
          const reactance = 2 * Math.PI * hz * figures.henry;
          expect((figures.seriesOhm * figures.parallelOhm) / reactance ** 2).toBeCloseTo(1, 10);
          // Resistance against current: a power of the flux power less 2.
          const doubled = coredCoilFigures(coil, { ...loss, fluxPower }, 2 * peakA, hz);
          expect(doubled.seriesOhm / figures.seriesOhm / 2 ** (fluxPower - 2)).toBeCloseTo(1, 9);
        },
      ),
      { seed: 94 },
    );
  });
  it('agrees with Ampère’s law round core and gap: H l in both adds up to N I', () => {
    const flux = peakFluxT(coil, 5);
    const mu0 = 4e-7 * Math.PI;
    const ampereTurns = (flux / mu0) * coil.gapM + (flux / (mu0 * 2000)) * coil.coreLengthM;
    expect(ampereTurns / (120 * 5)).toBeCloseTo(1, 10);
    expect(coil.turns ** 2 / reluctancePerH(coil)).toBeCloseTo(coredInductanceH(coil), 15);
  });
  it('goes back from inductance to gap and from flux to current', () => {
    expect(gapForM(coredInductanceH(coil), coil)).toBeCloseTo(0.5e-3, 12);
    const amperes = saturationCurrentA(coil, 1.5);
    expect(peakFluxT(coil, amperes)).toBeCloseTo(1.5, 12);
  });
  it('has materials whose ranges are ranges', () => {
    for (const material of Object.values(CORE_MATERIALS)) {
      for (const [least, most] of Object.values(material)) expect(least).toBeLessThan(most);
    }
  });
});

describe('saturation', () => {
  const soft = { henry: 3e-3, airHenry: 0.3e-3, kneeA: 8 };
  const linkage = (currentA: number) => 0.3e-3 * currentA + 2.7e-3 * 8 * Math.tanh(currentA / 8);

  it('takes 10 % at a third of the knee and half at 0.88 of it, without air', () => {
    const bare = { henry: 1, airHenry: 0, kneeA: 1 };
    expect(currentAtDropA(bare, 0.1)).toBeCloseTo(0.33, 2);
    expect(currentAtDropA(bare, 0.5)).toBeCloseTo(0.88, 2);
    expect(currentAtDropA({ ...bare, airHenry: 0.6 }, 0.5)).toBeNull();
    expect(incrementalInductanceH(soft, currentAtDropA(soft, 0.1)!)).toBeCloseTo(2.7e-3, 12);
    expect(kneeFromRatingA(3e-3, 0.3e-3, currentAtDropA(soft, 0.1)!, 0.1)).toBeCloseTo(8, 10);
    expect(kneeFromRatingA(3e-3, 2.9e-3, 1, 0.1)).toBeNull();
  });
  it('has the slope of the flux linkage', () => {
    for (const amperes of [0, 3, 8, 20]) {
      const slope = (linkage(amperes + 1e-4) - linkage(amperes - 1e-4)) / 2e-4;
      expect(incrementalInductanceH(soft, amperes) / slope).toBeCloseTo(1, 6);
    }
  });
  it('is described by the first harmonic of the voltage, found here from the voltage itself', () => {
    for (const peakA of [0.5, 4, 16, 80]) {
      const steps = 40000;
      let [first, third] = [0, 0];
      for (let n = 0; n < steps; n++) {
        const angle = (2 * Math.PI * (n + 0.5)) / steps;
        // v = L(i) di/dt with i = I sin ωt, ω = 1.
        const volts = incrementalInductanceH(soft, peakA * Math.sin(angle)) * peakA * Math.cos(angle);
        first += (2 * volts * Math.cos(angle)) / steps;
        third += (2 * volts * Math.cos(3 * angle)) / steps;
      }
      expect(Math.abs(describingInductanceH(soft, peakA) / (first / peakA) - 1)).toBeLessThan(1e-4);
      expect(Math.abs(thirdHarmonicRatio(soft, peakA) - Math.abs(third / first))).toBeLessThan(2e-4);
    }
  });
  it('falls as 1 − x²/4 at first, its third harmonic grows as x²/4, and ends as the square wave’s 4/(πx)', () => {
    const bare = { henry: 1, airHenry: 0, kneeA: 1 };
    expect(describingInductanceH(bare, 0)).toBe(1);
    expect(thirdHarmonicRatio(bare, 0)).toBe(0);
    expect((1 - describingInductanceH(bare, 0.02)) / 0.0001).toBeCloseTo(1, 2);
    expect(thirdHarmonicRatio(bare, 0.02) / 0.0001).toBeCloseTo(1, 2);
    expect(describingInductanceH(bare, 200) / (4 / (Math.PI * 200))).toBeCloseTo(1, 3);
  });
});

import { describe, expect, it } from 'vitest';
import {
  axialPressureRatio,
  beamAngleRad,
  farAxialPressureRatio,
  HALF_POWER_DB,
  HALF_PRESSURE_DB,
  kaOf,
  lastAxialMaximumM,
  lineDirectivity,
  nearFieldCentreRatio,
  nearFieldDistanceRatio,
  nearFieldLimitHz,
  nearToFarRatio,
  pistonAirMassKg,
  pistonBeamAngleRad,
  pistonBeamArgument,
  pistonDirectivitiesInto,
  pistonDirectivity,
  pistonDirectivityAt,
  pistonDirectivityFactor,
  pistonFirstNullRad,
  pistonFirstSideLobe,
  pistonImpedance,
  portNearFieldFactor,
  rayleighDistanceM,
  wavelengthM,
  wavenumberPerM,
} from '../../../../src/core/acoustics/index.ts';
import { findMinimum, gaussLegendre } from '../../../../src/core/math/index.ts';

const decibels = (ratio: number): number => 20 * Math.log10(Math.abs(ratio));

describe('pistonDirectivity', () => {
  it('has the textbook arguments 1.616, 2.215 and the side lobe of −17.6 dB (Beranek & Mellow, as quoted)', () => {
    expect(Math.abs(pistonBeamArgument(HALF_POWER_DB) - 1.61633995)).toBeLessThan(1e-8);
    expect(Math.abs(pistonBeamArgument(HALF_PRESSURE_DB) - 2.2151)).toBeLessThan(2e-5);
    expect(Math.abs(decibels(pistonFirstSideLobe()) + 17.6)).toBeLessThan(0.05);
    expect(pistonFirstSideLobe()).toBeLessThan(0);
  });

  it('agrees with the surface integral over the disc', () => {
    // Strips across the disc: (2/π) ∫ √(1 − s²) cos(x s) ds; s = sin φ is smooth.
    const { nodes, weights } = gaussLegendre(120);
    for (const x of [1e-6, 0.5, 3, 8, 20, 45]) {
      let sum = 0;
      for (let i = 0; i < nodes.length; i++) {
        const angle = (Math.PI / 2) * nodes[i]!;
        sum += weights[i]! * Math.cos(angle) ** 2 * Math.cos(x * Math.sin(angle));
      }
      expect(Math.abs(pistonDirectivity(x) - sum)).toBeLessThan(1e-13);
      expect(pistonDirectivity(-x)).toBe(pistonDirectivity(x));
    }
    expect(pistonDirectivity(0)).toBe(1);
    expect(pistonDirectivityAt(3, Math.PI / 2)).toBe(pistonDirectivity(3));
  });

  it('is the same from the table, to 1e-8, beyond its end too', () => {
    const values = Float64Array.from({ length: 3001 }, (_, i) => i * 0.03);
    const out = new Float64Array(values.length);
    for (const scale of [1, -0.7, 0.013, 0]) {
      pistonDirectivitiesInto(out, values, scale);
      let worst = 0;
      values.forEach((value, i) => {
        worst = Math.max(worst, Math.abs(out[i]! - pistonDirectivity(value * scale)));
      });
      expect(worst, `scale ${scale}`).toBeLessThan(1e-8);
    }
  });

  it('gives angles only where the piston beams that much', () => {
    expect(pistonBeamAngleRad(HALF_POWER_DB, 1)).toBeNull();
    expect(pistonFirstNullRad(3.8)).toBeNull();
    const angle = pistonBeamAngleRad(HALF_POWER_DB, 5)!;
    expect(decibels(pistonDirectivityAt(5, angle))).toBeCloseTo(HALF_POWER_DB, 10);
    expect(beamAngleRad(2, 2)).toBeCloseTo(Math.PI / 2, 12);
    expect(() => pistonBeamArgument(0)).toThrow(RangeError);
  });
});

describe('pistonImpedance', () => {
  it('is (ka)²/2 and 8ka/(3π) at low ka, 1 and 2/(π ka) at high (Rayleigh)', () => {
    const low = pistonImpedance(1e-4);
    expect(low.re / (1e-8 / 2)).toBeCloseTo(1, 7);
    expect(low.im / ((8 * 1e-4) / (3 * Math.PI))).toBeCloseTo(1, 7);
    const high = pistonImpedance(500);
    expect(Math.abs(high.re - 1)).toBeLessThan(1e-4);
    // A ripple of relative size √(π/(4 ka)) rides on it.
    expect(Math.abs(high.im * Math.PI * 250 - 1)).toBeLessThan(0.04);
  });

  it('agrees with King’s integral over wavenumbers for its resistance', () => {
    // R = 2 ∫0..π/2 J1(ka sin θ)²/ sin θ dθ = (ka)²/2 ∫ D² sin θ dθ: the power through the half sphere.
    const { nodes, weights } = gaussLegendre(80);
    for (const ka of [0.1, 0.49, 0.51, 1, 3, 12]) {
      let sum = 0;
      for (let i = 0; i < nodes.length; i++) {
        const angle = (Math.PI / 4) * (1 + nodes[i]!);
        sum += (Math.PI / 4) * weights[i]! * pistonDirectivityAt(ka, angle) ** 2 * Math.sin(angle);
      }
      expect(Math.abs(pistonImpedance(ka).re / ((ka ** 2 / 2) * sum) - 1)).toBeLessThan(1e-12);
      expect(Math.abs(pistonDirectivityFactor(ka) * (sum / 2) - 1)).toBeLessThan(1e-12);
    }
  });

  it('has the air mass 8ρa³/3 a side as the slope of its reactance', () => {
    const [a, rho, c] = [0.1, 1.2041, 343.2];
    const omega = 1e-3;
    const mass = (pistonImpedance((omega * a) / c).im * rho * c * Math.PI * a ** 2) / omega;
    expect(pistonAirMassKg(a, rho, 1) / mass).toBeCloseTo(1, 8);
    expect(pistonAirMassKg(a, rho, 2)).toBe(2 * pistonAirMassKg(a, rho, 1));
  });

  it('tends to 3.01 dB of directivity at low ka', () => {
    expect(10 * Math.log10(pistonDirectivityFactor(1e-3))).toBeCloseTo(3.0103, 4);
  });
});

describe('lineDirectivity', () => {
  it('agrees with the sum over its length', () => {
    const { nodes, weights } = gaussLegendre(40);
    const k = wavenumberPerM(3500, 343.2);
    for (const deg of [0, 10, 45, 80]) {
      const angle = (deg * Math.PI) / 180;
      const sum = nodes.reduce(
        (total, t, i) => total + (weights[i]! / 2) * Math.cos(k * 0.06 * t * Math.sin(angle)),
        0,
      );
      expect(lineDirectivity(0.12, k, angle)).toBeCloseTo(sum, 13);
    }
    expect(lineDirectivity(0.12, k, 0)).toBe(1);
  });
});

describe('near field of a piston', () => {
  it('exact axial form: maxima of 2, the last at a²/λ − λ/4, and the far form beyond', () => {
    const [a, k, wavelength] = [0.1, wavenumberPerM(6000, 343.2), wavelengthM(6000, 343.2)];
    const last = lastAxialMaximumM(a, wavelength)!;
    expect(axialPressureRatio(a, last, k)).toBeCloseTo(2, 10);
    const found = findMinimum((r) => -axialPressureRatio(a, r, k), last * 0.8, last * 3, 1e-9);
    expect(found.x).toBeCloseTo(last, 6);
    expect(axialPressureRatio(a, 30, k) / farAxialPressureRatio(a, 30, k)).toBeCloseTo(1, 4);
    expect(lastAxialMaximumM(0.01, 0.5)).toBeNull();
    expect(rayleighDistanceM(a, wavelength)).toBeCloseTo((Math.PI * 0.01) / wavelength, 12);
  });

  it('ratio to the far field 2r/a is the limit of the exact form (26.02 dB for 0.1 m at 1 m, Keele 1974)', () => {
    expect(decibels(nearToFarRatio(0.1, 1, 'half'))).toBeCloseTo(26.0206, 4);
    const k = 1e-3;
    const exact = axialPressureRatio(0.1, 0, k) / farAxialPressureRatio(0.1, 1, k);
    expect(nearToFarRatio(0.1, 1, 'half')).toBeCloseTo(exact, 6);
    expect(nearToFarRatio(0.1, 1, 'full')).toBeCloseTo(2 * exact, 6);
  });

  it('microphone 5 mm off a 90 mm cone reads 0.48 dB low at 0.055 radii; at ka = 1 the centre is 0.36 dB down', () => {
    const k = 1e-6;
    const exact = axialPressureRatio(1, 0.055, k) / axialPressureRatio(1, 0, k);
    expect(nearFieldDistanceRatio(0.055)).toBeCloseTo(exact, 8);
    expect(decibels(nearFieldDistanceRatio(0.055))).toBeCloseTo(-0.48, 2);
    expect(decibels(nearFieldCentreRatio(1))).toBeCloseTo(-0.365, 3);
    expect(nearFieldCentreRatio(0)).toBe(1);
    expect(nearFieldLimitHz(0.2, 343)).toBeCloseTo(545.9, 1);
    expect(kaOf(0.1, nearFieldLimitHz(0.2, 343), 343)).toBeCloseTo(1, 12);
  });

  it('port level shift makes equal volume accelerations sum as they do far away', () => {
    // Near pressure ∝ acceleration · radius; far pressure ∝ acceleration · area.
    const [coneRadius, portRadius] = [0.08, 0.035];
    const scaled = portNearFieldFactor(Math.PI * portRadius ** 2, Math.PI * coneRadius ** 2) * portRadius;
    expect(scaled / coneRadius).toBeCloseTo(portRadius ** 2 / coneRadius ** 2, 12);
  });
});

import { describe, expect, it } from 'vitest';
import { MU0, ringField } from '../../../../src/core/build/coils/index.ts';
import {
  layTurns,
  proximityOhm,
  skinDepthM,
  skinRatio,
  squaredFieldSum,
  turnsOhm,
} from '../../../../src/core/build/winding/index.ts';

const RHO = 1.724e-8;

/** Resistance ratio by the power series of Kelvin's functions, for small arguments. */
function kelvinRatio(q: number): number {
  // ber + j bei = J0(q exp(j3π/4)) = Σ (j q²/4)^n / (n!)², and their slopes.
  let [ber, bei, berSlope, beiSlope] = [0, 0, 0, 0];
  let term = 1;
  for (let n = 0; n < 40; n++) {
    if (n > 0) term *= (q * q) / 4 / (n * n);
    const sign = n % 4 < 2 ? 1 : -1;
    if (n % 2 === 0) {
      ber += sign * term;
      berSlope += (sign * term * 2 * n) / q;
    } else {
      bei += sign * term;
      beiSlope += (sign * term * 2 * n) / q;
    }
  }
  return ((q / 2) * (ber * beiSlope - bei * berSlope)) / (berSlope ** 2 + beiSlope ** 2);
}

describe('skin effect', () => {
  it('has a depth of 0.66 mm in copper at 10 kHz', () => {
    expect(skinDepthM(RHO, 10000) * 1000).toBeCloseTo(0.661, 3);
  });
  it('raises the resistance as printed tables have it (Terman, from memory) and as Kelvin’s functions do', () => {
    for (const [q, printed] of [
      [1, 1.005],
      [2, 1.078],
      [3, 1.318],
      [4, 1.678],
      [5, 2.043],
    ] as const) {
      const diameterM = Math.SQRT2 * q * skinDepthM(RHO, 5000);
      const found = skinRatio(diameterM, RHO, 5000);
      expect(Math.abs(found - printed)).toBeLessThan(1.1e-3);
      expect(found / kelvinRatio(q)).toBeCloseTo(1, 10);
    }
  });
  it('is nothing at low and a/(2δ) + 1/4 at high frequencies', () => {
    expect(skinRatio(1e-3, RHO, 1)).toBeCloseTo(1, 9);
    const radii = 0.0005 / skinDepthM(RHO, 1e8);
    expect(Math.abs(skinRatio(1e-3, RHO, 1e8) / (radii / 2 + 0.25) - 1)).toBeLessThan(1e-4);
  });
});

describe('field of a ring', () => {
  it('is that of Biot and Savart, piece by piece', () => {
    for (const [radius, height] of [
      [0.005, 0.003],
      [0.03, 0],
      [0.021, 0.004],
    ] as const) {
      let [radial, axial] = [0, 0];
      const pieces = 20000;
      for (let n = 0; n < pieces; n++) {
        const angle = (2 * Math.PI * (n + 0.5)) / pieces;
        const [x, y] = [radius - 0.02 * Math.cos(angle), -0.02 * Math.sin(angle)];
        const cubed = Math.hypot(x, y, height) ** 3;
        const piece = (0.02 * 2 * Math.PI) / pieces;
        radial += (piece * Math.cos(angle) * height) / cubed;
        axial += (piece * (-Math.sin(angle) * y - Math.cos(angle) * x)) / cubed;
      }
      const field = ringField(0.02, radius, height);
      const scale = MU0 / (4 * Math.PI);
      expect(Math.abs(field.radialTPerA - scale * radial)).toBeLessThan(1e-8 * scale * Math.abs(axial));
      expect(Math.abs(field.axialTPerA / (scale * axial) - 1)).toBeLessThan(1e-6);
    }
  });
  it('is μ0/(2a) in the middle and dies away as a dipole', () => {
    expect(ringField(0.02, 1e-9, 0).axialTPerA / (MU0 / 0.04)).toBeCloseTo(1, 9);
    const far = ringField(0.02, 1e-9, 2).axialTPerA;
    expect(Math.abs(far / ((MU0 * 0.02 ** 2) / (2 * 2 ** 3)) - 1)).toBeLessThan(2e-4);
  });
});

describe('proximity effect', () => {
  const turns = layTurns({ innerRadiusM: 0.01404, pitchM: 1.08e-3, turnsPerLayer: 13, turns: 169 });
  const fieldSum = squaredFieldSum(turns);
  it('is the 0.27 Ω at 3 kHz of the worked coil, beside 0.49 Ω of its wire', () => {
    expect(Math.abs(proximityOhm(fieldSum, 1e-3, RHO, 3000).ohm / 0.266526932 - 1)).toBeLessThan(1e-6);
    expect(turnsOhm(turns, 1e-3, RHO)).toBeCloseTo(0.4909, 4);
  });
  it('rises with the square of frequency and the fourth power of the wire, and says where it only bounds', () => {
    const at = (wireM: number, hz: number) => proximityOhm(fieldSum, wireM, RHO, hz);
    expect(at(1e-3, 6000).ohm / at(1e-3, 3000).ohm).toBeCloseTo(4, 9);
    expect(at(2e-3, 3000).ohm / at(1e-3, 3000).ohm).toBeCloseTo(16, 9);
    expect(at(1e-3, 3000).isUpperBound).toBe(false);
    // 1 mm is two skin depths at 17.5 kHz.
    expect([17000, 18000].map((hz) => at(1e-3, hz).isUpperBound)).toEqual([false, true]);
  });
  it('of two turns is that of each in the other’s field, and nothing for one', () => {
    const [a, b] = [
      { radiusM: 0.02, alongM: 0 },
      { radiusM: 0.022, alongM: 0.001 },
    ];
    const squared = (field: { radialTPerA: number; axialTPerA: number }) =>
      field.radialTPerA ** 2 + field.axialTPerA ** 2;
    const byHand =
      2 * Math.PI * (0.02 * squared(ringField(0.022, 0.02, -0.001)) + 0.022 * squared(ringField(0.02, 0.022, 0.001)));
    expect(squaredFieldSum([a, b]) / byHand).toBeCloseTo(1, 12);
    expect(squaredFieldSum([a])).toBe(0);
  });
  it('is the loss of a wire in an even field by integration over its section: ω²B²d⁴π/(128ρ) a metre at peak B', () => {
    // Eddy current density ωBx/ρ at distance x from the wire's middle plane, peak; loss ρJ²/2 over the circle.
    const [radius, omega, peakT] = [0.5e-3, 2 * Math.PI * 3000, 1e-3];
    const steps = 400;
    let lossWPerM = 0;
    for (let n = 0; n < steps; n++) {
      const x = ((n + 0.5) / steps) * 2 * radius - radius;
      const density = (omega * peakT * x) / RHO;
      lossWPerM += ((RHO * density ** 2) / 2) * 2 * Math.sqrt(radius ** 2 - x ** 2) * ((2 * radius) / steps);
    }
    // The same field at 1 A along 1 m of turn: I²R/2 is the loss.
    const ohm = proximityOhm(peakT ** 2, 2 * radius, RHO, 3000).ohm;
    expect(Math.abs(ohm / 2 / lossWPerM - 1)).toBeLessThan(1e-3);
  });
});

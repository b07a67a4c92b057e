import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boxLosses,
  chamberComplianceM3PerPa,
  ductTwoPort,
  leakQ,
  leakQFromDip,
  openInputImpedance,
  panelAdmittance,
  panelMode,
  slitLeakAdmittance,
  slitLeakMassKgPerM4,
  slitLeakPaSPerM3,
  totalLossQ,
  type WallPanel,
} from '../../../../src/core/acoustics/index.ts';
import { add, complex, magnitude, reciprocal } from '../../../../src/core/math/index.ts';
import { apart, omegaOf, STILL_AIR } from '../duct/integrate.ts';
import { admittanceAt } from '../sweep.ts';

const AIR = STILL_AIR;
const size = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });

describe('boxLosses', () => {
  it('each alone makes the box’s resonance as sharp as it says (seed 68)', () => {
    fc.assert(
      fc.property(size(0.005, 0.2), size(15, 80), size(2, 100), (volumeM3, tuningHz, q) => {
        const omega = omegaOf(tuningHz);
        const ofLoss = (which: 'ql' | 'qa' | 'qp'): number => {
          const box = boxLosses({ volumeM3, tuningHz, ql: null, qa: null, qp: null, [which]: q }, AIR);
          const { complianceM3PerPa: c, portMassKgPerM4: m } = box;
          // Stored energy ½ω C p² twice over the power, at resonance, for 1 Pa across the compliance.
          const spring = reciprocal(add(complex(box.absorptionPaSPerM3 ?? 0), complex(0, -1 / (omega * c))));
          const port = reciprocal(complex(box.portPaSPerM3 ?? 0, omega * m));
          const leak = box.leakPaSPerM3 === null ? 0 : 1 / box.leakPaSPerM3;
          return (omega * c) / (spring.re + port.re + leak);
        };
        expect(ofLoss('ql')).toBeCloseTo(q, 6);
        // In series: R ω C = 1/Q, power R |U|², exact to 1/Q².
        expect(Math.abs(ofLoss('qa') / q - 1)).toBeLessThan(1.01 / (q * q));
        expect(Math.abs(ofLoss('qp') / q - 1)).toBeLessThan(1.01 / (q * q));
      }),
      { seed: 68 },
    );
  });

  it('adds them as 1/Q: 7, 60 and 90 together make 5.86; none make no loss', () => {
    expect(totalLossQ([7, 60, 90])).toBeCloseTo(5.86046512, 7);
    expect(totalLossQ([7, null])).toBeCloseTo(7, 12);
    expect(totalLossQ([null])).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('leakQFromDip', () => {
  /** |Z| at fB over Re of a driver in a leaky box tuned to its resonance, by circuit. */
  const dipOverRe = (alpha: number, qes: number, qms: number, ql: number): number => {
    // In units of the driver at its resonance: Zas = 1/QMS, motional part 1/QES; box 1/(ωC) = α, at fB only the leak is left.
    const leak = ql * alpha;
    const motional = 1 / qes / (1 / qms + leak);
    return 1 + motional;
  };

  it('finds the leak that made the dip, exactly for a box tuned to the driver’s resonance (seed 69)', () => {
    fc.assert(
      fc.property(size(0.3, 6), size(0.2, 0.8), size(2, 10), size(3, 50), (alpha, qes, qms, ql) => {
        const found = leakQFromDip({ tuningOverFs: 1, alpha, dipOverRe: dipOverRe(alpha, qes, qms, ql), qes, qms });
        expect(found.ok && Math.abs(found.value / ql - 1)).toBeLessThan(1e-9);
      }),
      { seed: 69 },
    );
  });

  it('says so where there is none to find', () => {
    const dip = { tuningOverFs: 1, alpha: 1.5, qes: 0.4, qms: 5 };
    for (const dipOverRe of [0.9, 1, 14, Number.NaN]) {
      const found = leakQFromDip({ ...dip, dipOverRe });
      expect(found.ok ? '' : found.problems[0]!.code).toBe('acoustics.no-leak-in-dip');
    }
  });
});

describe('slit leak', () => {
  const slit = { gapM: 3e-4, widthM: 0.1, throughM: 0.018 };

  it('of 0.3 mm by 100 mm through 18 mm is 1.45 MPa·s/m³, QL 97 for 40 L at 38 Hz', () => {
    expect(slitLeakPaSPerM3(slit, AIR) / 1e6).toBeCloseTo(1.45, 2);
    expect(leakQ(slitLeakPaSPerM3(slit, AIR), 38, chamberComplianceM3PerPa(0.04, AIR))).toBeCloseTo(97, -0.5);
  });

  it('is the exact slit line at low frequency: resistance and six fifths of the mass', () => {
    const line = ductTwoPort({ section: { kind: 'slit', gapM: 3e-4, widthM: 0.1 }, lengthM: 0.018 }, AIR, omegaOf(20));
    const [y] = admittanceAt(slitLeakAdmittance(slit, AIR), [20]);
    expect(apart(reciprocal(y!), openInputImpedance(line))).toBeLessThan(2e-3);
    expect(slitLeakMassKgPerM4(slit, AIR)).toBeCloseTo((1.2 * 1.2041 * 0.018) / 3e-5, 6);
  });
});

describe('panelMode', () => {
  const board: WallPanel = {
    widthM: 0.35,
    heightM: 0.5,
    thicknessM: 0.018,
    youngPa: 3.5e9,
    poisson: 0.3,
    densityKgPerM3: 700,
  };

  /** Volume that 1 Pa pushes a simply supported plate aside: two Poisson problems on a grid, each by over-relaxation. */
  const displaced = (panel: WallPanel, cells: number): number => {
    const { widthM: a, heightM: b, thicknessM: t } = panel;
    const stiffness = (panel.youngPa * t ** 3) / (12 * (1 - panel.poisson ** 2));
    const [nx, ny] = [cells, cells];
    const [hx, hy] = [a / nx, b / ny];
    const solve = (load: Float64Array): Float64Array => {
      const u = new Float64Array((nx + 1) * (ny + 1));
      const centre = 2 / hx ** 2 + 2 / hy ** 2;
      for (let sweep = 0; sweep < 600; sweep++)
        for (let i = 1; i < nx; i++)
          for (let j = 1; j < ny; j++) {
            const at = i * (ny + 1) + j;
            const around = (u[at - ny - 1]! + u[at + ny + 1]!) / hx ** 2 + (u[at - 1]! + u[at + 1]!) / hy ** 2;
            u[at]! += 1.85 * ((around + load[at]!) / centre - u[at]!);
          }
      return u;
    };
    const moment = solve(new Float64Array((nx + 1) * (ny + 1)).fill(1));
    const w = solve(moment.map((m) => m / stiffness));
    return w.reduce((sum, height) => sum + height * hx * hy, 0);
  };

  it('bends by the plate on a grid: static compliance within 0.5 % (32 cells extrapolated)', () => {
    const [coarse, fine] = [displaced(board, 16), displaced(board, 32)];
    const limit = (4 * fine - coarse) / 3;
    expect(Math.abs(panelMode(board).staticComplianceM3PerPa / limit - 1)).toBeLessThan(5e-3);
  });

  it('has the mass of its mode’s shape: m ab/4 over (4ab/π²)²', () => {
    const { massKgPerM4, resonanceHz, complianceM3PerPa } = panelMode(board);
    const area = 0.35 * 0.5;
    expect(massKgPerM4 / ((700 * 0.018 * area) / 4 / ((4 * area) / Math.PI ** 2) ** 2)).toBeCloseTo(1, 10);
    expect(omegaOf(resonanceHz) ** 2 * massKgPerM4 * complianceM3PerPa).toBeCloseTo(1, 10);
  });

  it('is 1.5 % of a 40 L box in bass, real and η wide at its resonance', () => {
    const mode = panelMode(board);
    const box = chamberComplianceM3PerPa(0.04, AIR);
    expect(mode.staticComplianceM3PerPa / box).toBeCloseTo(0.0153, 4);
    const [low, at, below, above] = admittanceAt(panelAdmittance(mode, 0.02), [
      5,
      mode.resonanceHz,
      mode.resonanceHz * 0.99,
      mode.resonanceHz * 1.01,
    ]);
    expect(low!.im / (omegaOf(5) * mode.complianceM3PerPa)).toBeCloseTo(1, 3);
    expect(Math.abs(at!.im)).toBeLessThan(1e-9 * at!.re);
    // Half power at 1 ± η/2.
    for (const side of [below!, above!]) expect((magnitude(side) / at!.re) ** 2).toBeCloseTo(0.5, 1.5);
  });
});

import { describe, expect, it } from 'vitest';
import { type DriverFit, fitDriver, impedanceSweep } from '../../../../src/core/design/fits/index.ts';
import { randomStream } from '../../../../src/core/math/index.ts';
import { COILS, drawnDriver, expectValue, type Made, madeSweep, noisy, TRUTH, WOOFER } from './madeSweep.ts';

const NAMES = ['reOhm', 'fsHz', 'qms', 'qes', 'qts'] as const;
const options = { coil: 'choose', leadOhm: 0, dcOhm: null } as const;

const worst = (fit: DriverFit): number => Math.max(...NAMES.map((name) => Math.abs(fit[name].value / TRUTH[name] - 1)));

describe('fitDriver without noise', () => {
  for (const [maker, made] of Object.entries(COILS))
    for (const phase of [true, false])
      for (const coil of ['choose', 'plain', 'semi', 'both'] as const)
        it(`finds the driver with coil ${maker}, ${phase ? 'with' : 'without'} phase, fitted as ${coil}`, () => {
          const fit = expectValue(fitDriver(madeSweep({ ...made, phase }), { ...options, coil }));
          expect(worst(fit)).toBeLessThan(1e-5);
          expect(fit.resonanceWith).toBe(maker);
          if (coil !== 'choose') expect(fit.coil.form).toBe(coil);
          // Told where the coil that was wished for is not the one of the data.
          const simpler = coil === 'plain' && maker !== 'plain';
          if (simpler) expect(fit.findings.map(({ code }) => code)).toContain('fits.coil-equivalent');
          if (coil === maker || (coil === 'choose' && maker !== 'shunted')) expect(fit.findings).toEqual([]);
        });

  it('finds any driver (seeds 0 to 39)', () => {
    for (let seed = 0; seed < 40; seed++) {
      const { made, truth } = drawnDriver(seed);
      const fit = expectValue(fitDriver(madeSweep(made), options));
      for (const name of NAMES)
        expect(Math.abs(fit[name].value / truth[name] - 1), `seed ${seed} ${name}`).toBeLessThan(1e-3);
    }
  });

  it('finds the coil itself', () => {
    const plain = expectValue(fitDriver(madeSweep(), options));
    expect(plain.coil.leH!.value).toBeCloseTo(0.45e-3, 9);
    const semi = expectValue(fitDriver(madeSweep(COILS.semi), options)).coil.semiInductance!;
    expect(semi.kOhmSn.value / 0.0084).toBeCloseTo(1, 6);
    expect(semi.exponent.value).toBeCloseTo(0.68, 7);
    const { shunt, leH } = expectValue(fitDriver(madeSweep(COILS.shunted), options)).bestCoil;
    expect([leH!.value / 0.2e-3, shunt!.inductanceH.value / 0.4e-3, shunt!.resistanceOhm.value / 4]).toEqual([
      expect.closeTo(1, 6),
      expect.closeTo(1, 6),
      expect.closeTo(1, 6),
    ]);
  });

  it('takes leads of known resistance out', () => {
    const leads = (inner: string) => [
      {
        kind: 'admittance' as const,
        id: 'leads',
        nodes: ['t', inner] as const,
        admittance: (_omegas: Float64Array, re: Float64Array, im: Float64Array) => {
          re.fill(1 / 0.3);
          im.fill(0);
        },
      },
    ];
    const sweep = madeSweep({ further: leads });
    expect(worst(expectValue(fitDriver(sweep, { ...options, leadOhm: 0.3 })))).toBeLessThan(1e-6);
    const untold = expectValue(fitDriver(sweep, { ...options, leadOhm: null }));
    expect(untold.reOhm.value).toBeCloseTo(6.1, 6);
    expect(untold.findings.map(({ code }) => code)).toEqual(['fits.leads-unknown']);
    const checked = expectValue(fitDriver(sweep, { ...options, leadOhm: null, dcOhm: 5.8 }));
    expect(checked.findings.map(({ code }) => code)).toEqual(['fits.leads-suspected']);
  });
});

describe('fitDriver on what it cannot model', () => {
  it('says when nothing fits, and still comes near (a coil of two shunted sections)', () => {
    const sweep = noisy(
      madeSweep({
        ...COILS.shunted,
        countPoints: 300,
        parameters: { ...WOOFER, leH: 0, semiInductance: { kOhmSn: 0.02, exponent: 0.45 } },
      }),
      0.001,
      4,
    );
    const fit = expectValue(fitDriver(sweep, options));
    expect(fit.findings.map(({ code }) => code)).toContain('fits.model-misfit');
    expect(Math.abs(fit.fsHz.value / 38 - 1)).toBeLessThan(0.002);
    expect(Math.abs(fit.qms.value / 4.2 - 1)).toBeLessThan(0.02);
  });
});

describe('fitDriver on nonsense', () => {
  it('neither throws nor gives a number that is none (seeds 0 to 149)', () => {
    for (let seed = 0; seed < 150; seed++) {
      const random = randomStream(seed);
      const n = Math.floor(60 * random.uniform());
      let hz = 1;
      const frequenciesHz = Float64Array.from({ length: n }, () => {
        hz *= 1 + random.uniform();
        return hz;
      });
      const wild = 10 ** (3 * random.uniform());
      const magnitudesOhm = frequenciesHz.map(() => 10 * wild ** random.normal());
      const phasesRad = random.uniform() < 0.5 ? null : frequenciesHz.map(() => 6 * random.normal());
      const result = fitDriver({ frequenciesHz, magnitudesOhm, phasesRad }, options);
      if (!result.ok) continue;
      for (const name of NAMES) {
        const { value, low, high } = result.value[name];
        expect([value, low, high].every(Number.isFinite), `seed ${seed} ${name}`).toBe(true);
        expect(low <= value && value <= high).toBe(true);
      }
    }
  });
});

describe('fitDriver refuses or warns', () => {
  const codes = (made: Made): readonly string[] => {
    const result = fitDriver(madeSweep(made), options);
    return result.ok ? result.value.findings.map(({ code }) => code) : result.problems.map(({ code }) => code);
  };
  it('where the peak lies outside or at the edge', () => {
    expect(codes({ fromHz: 60 })).toEqual(['fits.no-peak']);
    expect(codes({ fromHz: 30 })).toEqual(['fits.peak-at-edge']);
  });
  it('where points are too few', () => {
    expect(codes({ countPoints: 7 })).toEqual(['fits.few-points']);
    expect(codes({ countPoints: 20 })).toEqual(['fits.sweep-coarse']);
  });
  it('where it is given no impedance', () => {
    const curve = {
      quantity: 'response' as const,
      frequenciesHz: [1, 2],
      magnitudes: [90, 90],
      phasesDeg: null,
      taken: { voltageV: 2.83, distanceM: 1 },
    };
    expect(() => impedanceSweep(curve)).toThrow(RangeError);
    expect(impedanceSweep({ ...curve, quantity: 'impedance', phasesDeg: [0, 90] }).phasesRad![1]).toBeCloseTo(
      Math.PI / 2,
      14,
    );
  });
});

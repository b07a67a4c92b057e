import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fourParameterCoilOhm,
  powerLawElements,
  powerLawFromInductance,
  powerLawThrough,
  resistorCoilOhm,
  semiInductanceOhm,
  seriesInductanceH,
  shortedCoilOhm,
} from '../../../../../src/core/acoustics/index.ts';
import {
  branchPower,
  compileCircuit,
  inductor,
  inputImpedance,
  resistor,
  semiInductance,
  solveCircuit,
  source,
  tabulateAdmittances,
} from '../../../../../src/core/circuit/index.ts';
import { multiply, reciprocal } from '../../../../../src/core/math/index.ts';

const exponents = fc.double({ min: 0.5, max: 0.95, noNaN: true });
const omegas = fc.double({ min: 100, max: 2e5, noNaN: true });
const plain = (id: string, nodes: [string, string], henry: number) =>
  inductor(id, nodes, { henry, dcrOhm: 0, coreLossTangent: 0 });
const solved = (branches: Parameters<typeof compileCircuit>[0], omega: number) => {
  const compiled = compileCircuit([source('V1', ['in', '0'], 1, 0), ...branches]);
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems));
  const solution = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, Float64Array.of(omega)));
  if (!solution.ok) throw new Error(JSON.stringify(solution.problems));
  const { re, im } = inputImpedance(solution.value, 'V1');
  return { solution: solution.value, re: re[0]!, im: im[0]! };
};

describe('power-law coil', () => {
  it('its elements in series and side by side make the same impedance (seed 73)', () => {
    fc.assert(
      fc.property(exponents, omegas, (exponent, omega) => {
        const z = semiInductanceOhm(0.02, exponent, omega);
        const { seriesOhm, seriesH, parallelOhm, parallelH } = powerLawElements({ kOhmSn: 0.02, exponent }, omega);
        expect(seriesOhm / z.re).toBeCloseTo(1, 10);
        expect(seriesH / seriesInductanceH(z, omega)).toBeCloseTo(1, 10);
        const beside = reciprocal({ re: 1 / parallelOhm!, im: -1 / (omega * parallelH) });
        expect(beside.re / z.re).toBeCloseTo(1, 9);
        expect(beside.im / z.im).toBeCloseTo(1, 9);
      }),
      { seed: 73 },
    );
  });
  it('without loss is a coil: no resistor in series nor beside it', () => {
    const elements = powerLawElements({ kOhmSn: 0.0005, exponent: 1 }, 1000);
    expect(elements).toEqual({ seriesOhm: 0, seriesH: 0.0005, parallelOhm: null, parallelH: 0.0005 });
  });
  it('gives a data sheet’s inductance back, read either way (seed 74)', () => {
    fc.assert(
      fc.property(exponents, fc.double({ min: 1e-5, max: 3e-3, noNaN: true }), (exponent, leH) => {
        const omega = 2 * Math.PI * 1000;
        const series = powerLawFromInductance(leH, 1000, exponent);
        expect(semiInductanceOhm(series.kOhmSn, exponent, omega).im / omega / leH).toBeCloseTo(1, 10);
        const whole = powerLawFromInductance(leH, 1000, exponent, 'magnitude');
        const z = semiInductanceOhm(whole.kOhmSn, exponent, omega);
        expect(Math.hypot(z.re, z.im) / omega / leH).toBeCloseTo(1, 10);
      }),
      { seed: 74 },
    );
  });
  it('is found from two of its impedances by slope and by phase alike; a coil with a bridge shows a gap', () => {
    const at = (hz: number) => semiInductanceOhm(0.01, 0.66, 2 * Math.PI * hz);
    const law = powerLawThrough(1000, at(1000), 10000, at(10000));
    expect(law.kOhmSn).toBeCloseTo(0.01, 10);
    for (const n of [law.exponent, law.exponentByPhaseLow, law.exponentByPhaseHigh]) expect(n).toBeCloseTo(0.66, 10);
    const coil = { seriesH: 0.0002, bridgedH: 0.00045, bridgeOhm: 3.5 };
    const bridged = (hz: number) => resistorCoilOhm(coil, 2 * Math.PI * hz);
    const found = powerLawThrough(1000, bridged(1000), 10000, bridged(10000));
    expect(Math.abs(found.exponent - found.exponentByPhaseLow)).toBeGreaterThan(0.05);
  });
});

describe('other forms against the solver’s own branches', () => {
  it('coil and bridged coil (seed 75)', () => {
    fc.assert(
      fc.property(omegas, fc.double({ min: 0.5, max: 40, noNaN: true }), (omega, bridgeOhm) => {
        const z = resistorCoilOhm({ seriesH: 2e-4, bridgedH: 4.5e-4, bridgeOhm }, omega);
        const circuit = solved(
          [plain('L1', ['in', 'a'], 2e-4), plain('L2', ['a', '0'], 4.5e-4), resistor('R2', ['a', '0'], bridgeOhm)],
          omega,
        );
        expect(circuit.re / z.re).toBeCloseTo(1, 9);
        expect(circuit.im / z.im).toBeCloseTo(1, 9);
        // All power is lost in the bridge.
        expect(branchPower(circuit.solution, 'R2')[0]! / (z.re / (z.re ** 2 + z.im ** 2))).toBeCloseTo(1, 9);
      }),
      { seed: 75, numRuns: 30 },
    );
  });
  it('semi-inductance with a shorting ring (seed 76)', () => {
    fc.assert(
      fc.property(omegas, fc.double({ min: 2, max: 50, noNaN: true }), (omega, shortingOhm) => {
        const z = shortedCoilOhm({ leakageH: 5e-5, leH: 6e-4, semiOhmS05: 0.04, shortingOhm }, omega);
        const circuit = solved(
          [
            plain('Lb', ['in', 'a'], 5e-5),
            plain('Le', ['a', '0'], 6e-4),
            semiInductance('K', ['a', '0'], { kOhmSn: 0.04, exponent: 0.5 }),
            resistor('Rs', ['a', '0'], shortingOhm),
          ],
          omega,
        );
        expect(circuit.re / z.re).toBeCloseTo(1, 9);
        expect(circuit.im / z.im).toBeCloseTo(1, 9);
      }),
      { seed: 76, numRuns: 30 },
    );
  });
  it('the shorted form: Le and Lb below, Rs above, a half-order law between when both are far off', () => {
    const coil = { leakageH: 0, leH: 1e3, semiOhmS05: 0.04, shortingOhm: 1e9 };
    const z = shortedCoilOhm(coil, 5000);
    const law = semiInductanceOhm(0.04, 0.5, 5000);
    expect(z.re / law.re).toBeCloseTo(1, 5);
    expect(z.im / law.im).toBeCloseTo(1, 5);
    const real = { leakageH: 5e-5, leH: 6e-4, semiOhmS05: 0.04, shortingOhm: 18 };
    expect(shortedCoilOhm(real, 1e-4).im / (1e-4 * 6.5e-4)).toBeCloseTo(1, 3);
    expect(shortedCoilOhm(real, 1e12).re / 18).toBeCloseTo(1, 2);
  });
  it('the four-parameter form is the power law for equal exponents and Ki/Kr = tan(nπ/2)', () => {
    const n = 0.7;
    const [resistiveK, reactiveK] = [0.01 * Math.cos((n * Math.PI) / 2), 0.01 * Math.sin((n * Math.PI) / 2)];
    const z = fourParameterCoilOhm({ resistiveK, resistiveExponent: n, reactiveK, reactiveExponent: n }, 3000);
    const law = semiInductanceOhm(0.01, n, 3000);
    const ratio = multiply(z, reciprocal(law));
    expect(ratio.re).toBeCloseTo(1, 12);
    expect(ratio.im).toBeCloseTo(0, 12);
  });
});

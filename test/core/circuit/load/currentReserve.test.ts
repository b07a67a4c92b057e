import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Branch } from '../../../../src/core/circuit/branch.ts';
import { capacitor, inductor, resistor, source } from '../../../../src/core/circuit/index.ts';
import { currentReserve, loadAdmittance, stepVariationS } from '../../../../src/core/circuit/load/index.ts';
import { UnsolvedLoad, withLoad } from '../../../../src/core/circuit/load/loadAdmittance.ts';

const coil = (id: string, nodes: readonly [string, string], henry: number) =>
  inductor(id, nodes, { henry, dcrOhm: 0, coreLossTangent: 0 });
const condenser = (id: string, nodes: readonly [string, string], farad: number) =>
  capacitor(id, nodes, { farad, esrOhm: 0 });
const loadOf = (...branches: readonly Branch[]) => {
  const load = loadAdmittance([source('V1', ['in', '0'], 2.83, 0), ...branches], 'V1');
  if (!load.ok) throw new Error(JSON.stringify(load.problems));
  return load.value;
};
const series = (ohm: number, henry: number, farad: number) =>
  loadOf(resistor('R1', ['in', 'a'], ohm), coil('L1', ['a', 'b'], henry), condenser('C1', ['b', '0'], farad));
const OPTIONS = { peakV: 1, sineBandHz: [1, 1e6], programmeHz: null } as const;

/** Integral of |y| of a series branch in closed form, S. */
function closedForm(ohm: number, henry: number, farad: number): number {
  const sigma = ohm / (2 * henry);
  const squared = 1 / (henry * farad) - sigma ** 2;
  if (squared > 0) {
    const wd = Math.sqrt(squared);
    const tp = Math.atan(wd / sigma) / wd;
    return (2 * Math.exp(-sigma * tp) * Math.sin(wd * tp)) / (wd * henry) / (1 - Math.exp((-sigma * Math.PI) / wd));
  }
  const [p, q] = [sigma + Math.sqrt(-squared), sigma - Math.sqrt(-squared)];
  const tp = Math.log(p / q) / (p - q);
  return (2 * (Math.exp(-q * tp) - Math.exp(-p * tp))) / (henry * (p - q));
}

describe('current reserve', () => {
  it.each([
    [4, 0.6e-3, 15e-6],
    [1, 0.6e-3, 15e-6],
    [0.6, 0.6e-3, 15e-6],
    [20, 0.6e-3, 15e-6],
    [4, 10e-3, 1e-3],
    [8, 10e-6, 1e-6],
  ])('of %d Ω, %d H and %d F in series is the closed form within 1e-4', (ohm, henry, farad) => {
    expect(Math.abs(stepVariationS(series(ohm, henry, farad))! / closedForm(ohm, henry, farad) - 1)).toBeLessThan(1e-4);
  });
  it('of a resistor is its conductance, of a coil behind it the same, of a capacitor behind it twice that', () => {
    expect(stepVariationS(loadOf(resistor('R1', ['in', '0'], 8)))).toBeCloseTo(1 / 8, 12);
    const behind = (part: Branch) => stepVariationS(loadOf(resistor('R1', ['in', 'a'], 8), part))! * 8;
    expect(Math.abs(behind(coil('L1', ['a', '0'], 1e-3)) - 1)).toBeLessThan(1e-4);
    // Up at once and back to nothing: a jump and as much again.
    expect(Math.abs(behind(condenser('C1', ['a', '0'], 10e-6)) - 2)).toBeLessThan(2e-4);
  });
  it('agrees with a simulation in time of a two-way load (trapezoidal rule, step of 0.5 µs)', () => {
    const [rw, lw, rt, ct] = [6, 0.4e-3, 4, 8e-6];
    const [resonanceOhm, resonanceH, resonanceF] = [20, 6e-3, 80e-6];
    const load = loadOf(
      coil('L1', ['in', 'w'], lw),
      resistor('R1', ['w', 'm'], rw),
      resistor('R2', ['m', '0'], resonanceOhm),
      coil('L2', ['m', '0'], resonanceH),
      condenser('C2', ['m', '0'], resonanceF),
      condenser('C1', ['in', 't'], ct),
      resistor('R3', ['t', '0'], rt),
    );
    // States: woofer current, voltage at the tank, its coil's current, the tweeter capacitor's voltage; 1 V from t = 0 on.
    const slope = ([i, v, j, u]: readonly number[]): number[] => [
      (1 - rw * i! - v!) / lw,
      (i! - v! / resonanceOhm - j!) / resonanceF,
      v! / resonanceH,
      (1 - u!) / (rt * ct),
    ];
    let state = [0, 0, 0, 0];
    const current = (s: readonly number[]) => s[0]! + (1 - s[3]!) / rt;
    let variation = current(state);
    const dt = 5e-7;
    for (let n = 0; n < 200_000; n++) {
      const k1 = slope(state);
      const k2 = slope(state.map((x, i) => x + dt * k1[i]!));
      const next = state.map((x, i) => x + (dt / 2) * (k1[i]! + k2[i]!));
      variation += Math.abs(current(next) - current(state));
      state = next;
    }
    expect(Math.abs(stepVariationS(load)! / variation - 1)).toBeLessThan(5e-4);
  });
  it('is never below the worst sine, and that is the least modulus (seed 65)', () => {
    const any = (from: number, to: number) =>
      fc.double({ min: Math.log(from), max: Math.log(to), noNaN: true }).map(Math.exp);
    fc.assert(
      fc.property(any(1, 20), any(1e-4, 1e-2), any(1e-6, 1e-4), (ohm, henry, farad) => {
        const reserve = currentReserve(series(ohm, henry, farad), OPTIONS)!;
        expect(reserve.ratio).toBeGreaterThan(0.9999);
        expect(reserve.sineA * ohm).toBeCloseTo(1, 6);
        expect(reserve.sineAtHz * 2 * Math.PI * Math.sqrt(henry * farad)).toBeCloseTo(1, 3);
        expect(reserve.resistanceOhm * reserve.worstA).toBeCloseTo(1, 12);
      }),
      { seed: 65, numRuns: 12 },
    );
  });
  it('has no bound for a capacitor straight across, and one when the programme has', () => {
    const load = loadOf(condenser('C1', ['in', '0'], 1e-6), resistor('R1', ['in', '0'], 1e6));
    expect(currentReserve(load, OPTIONS)).toBeNull();
    // Behind a first-order low-pass the capacitor draws C ω at once and falls back to nothing: twice that.
    const reserve = currentReserve(load, { ...OPTIONS, programmeHz: 20000 })!;
    expect(reserve.worstA / (2 * 2 * Math.PI * 20000 * 1e-6)).toBeCloseTo(1, 3);
  });
  it('hands on what the solver says, and throws without such a source', () => {
    const thrown = withLoad(() => {
      throw new UnsolvedLoad([{ code: 'circuit.singular', place: { kind: 'node', id: 'a' }, values: {} }]);
    });
    expect(thrown).toMatchObject({ ok: false, problems: [{ code: 'circuit.singular' }] });
    expect(withLoad(() => 3)).toEqual({ ok: true, value: 3 });
    expect(() => loadAdmittance([resistor('R1', ['a', '0'], 1)], 'V1')).toThrow(RangeError);
    expect(loadAdmittance([source('V1', ['in', '0'], 1, 0), resistor('R1', ['a', 'b'], 1)], 'V1').ok).toBe(false);
  });
});

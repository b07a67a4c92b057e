import { describe, expect, it } from 'vitest';
import type { Branch } from '../../../../src/core/circuit/branch.ts';
import { capacitor, inductor, resistor, source } from '../../../../src/core/circuit/index.ts';
import { dampingLeft, impedanceBehind } from '../../../../src/core/circuit/load/index.ts';

const omegas = Float64Array.of(2 * Math.PI * 40, 2 * Math.PI * 1000, 2 * Math.PI * 9000);
const coil = inductor('L1', ['in', 'w'], { henry: 1e-3, dcrOhm: 0.4, coreLossTangent: 0 });
const seen = (branches: readonly Branch[], nodes: readonly [string, string] = ['w', '0']) => {
  const found = impedanceBehind(branches, nodes, omegas);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
};

describe('impedance behind a driver', () => {
  it('is amplifier, cable and coil in series, whatever the amplifier plays', () => {
    for (const volts of [0, 2.83]) {
      const { re, im } = seen([source('A1', ['in', '0'], volts, 0.15), coil]);
      omegas.forEach((omega, f) => {
        expect(re[f]).toBeCloseTo(0.55, 9);
        expect(im[f]).toBeCloseTo(omega * 1e-3, 9);
      });
    }
  });
  it('is the textbook value of a second-order low-pass: r + jωL beside 1/(jωC)', () => {
    const { re, im } = seen([
      source('A1', ['in', '0'], 1, 0),
      coil,
      capacitor('C1', ['w', '0'], { farad: 22e-6, esrOhm: 0 }),
    ]);
    omegas.forEach((omega, f) => {
      // z = (r + jx)/(1 − ωCx + jωCr)
      const [a, b] = [1 - omega * 22e-6 * omega * 1e-3, omega * 22e-6 * 0.4];
      const scale = 1 / (a * a + b * b);
      expect(re[f]).toBeCloseTo((0.4 * a + omega * 1e-3 * b) * scale, 8);
      expect(im[f]).toBeCloseTo((omega * 1e-3 * a - 0.4 * b) * scale, 8);
    });
  });
  it('agrees with the fall of voltage when a load is put on: Z = R (V_open/V_loaded − 1) for resistors', () => {
    const pad = [source('A1', ['in', '0'], 10, 0), resistor('R1', ['in', 'w'], 4), resistor('R2', ['w', '0'], 6)];
    // Open 6 V; with 2.4 Ω across the lower leg is 12/7 Ω and holds 3 V.
    expect(seen(pad).re[1]).toBeCloseTo(2.4 * (6 / 3 - 1), 9);
  });
  it('works between two nodes of which neither is the return, and says what floats', () => {
    const bridge = [source('A1', ['in', '0'], 1, 0), resistor('R1', ['in', 'a'], 3), resistor('R2', ['b', '0'], 5)];
    expect(seen(bridge, ['a', 'b']).re[0]).toBeCloseTo(8, 9);
    expect(impedanceBehind([source('A1', ['in', '0'], 1, 0)], ['a', 'b'], omegas)).toMatchObject({ ok: false });
  });
  it('leaves all damping at 0 Ω and half of it at a source as high as the coil', () => {
    expect(dampingLeft(5.6, 0)).toBe(1);
    expect(dampingLeft(5.6, 5.6)).toBe(0.5);
  });
});

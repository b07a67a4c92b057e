import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MeasuredCurve } from '../../../src/core/measured/curveTable.ts';
import { curveText } from '../../../src/core/measured/curveText.ts';
import { readColumns } from '../../../src/core/measured/readColumns.ts';

describe('curveText', () => {
  it('writes a plain header and columns', () => {
    const curve: MeasuredCurve = {
      quantity: 'response',
      frequenciesHz: [20, 31.5],
      magnitudes: [80.25, 84],
      phasesDeg: [170, -5.5],
      taken: { voltageV: 2.83, distanceM: 1 },
    };
    expect(curveText(curve)).toBe(
      '# Taken with 2.83 V rms at 1 m\nFrequency (Hz)\tLevel (dB re 20 µPa)\tPhase (deg)\n20\t80.25\t170\n31.5\t84\t-5.5\n',
    );
    const impedance = curveText({ ...curve, quantity: 'impedance', phasesDeg: null });
    expect(impedance).toBe('# Modulus of the impedance\nFrequency (Hz)\tImpedance (ohm)\n20\t80.25\n31.5\t84\n');
  });

  it('is read back without a note (seed 58)', () => {
    const row = fc.tuple(
      fc.double({ min: 0.001, max: 0.5, noNaN: true }),
      fc.double({ min: 0.5, max: 120, noNaN: true }),
      fc.double({ min: -720, max: 720, noNaN: true }),
    );
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 2, maxLength: 40 }),
        fc.boolean(),
        fc.constantFrom<'response' | 'impedance'>('response', 'impedance'),
        (rows, withPhase, quantity) => {
          let x = 2;
          const frequenciesHz = rows.map(([step]) => {
            x += step;
            return Math.exp(x);
          });
          const curve: MeasuredCurve = {
            quantity,
            frequenciesHz,
            magnitudes: rows.map(([, m]) => m),
            phasesDeg: withPhase ? rows.map(([, , p]) => p) : null,
            taken: { voltageV: 2, distanceM: 0.5 },
          };
          const read = readColumns(curveText(curve), 'curve.txt');
          if (!read.ok || read.value.notes.length > 0 || read.value.quantity !== quantity) return false;
          const near = (a: readonly number[], b: readonly number[]) =>
            a.length === b.length && a.every((v, i) => Math.abs(v - b[i]!) <= 1e-8 * Math.abs(b[i]!) + 1e-300);
          return (
            near(read.value.frequenciesHz, frequenciesHz) &&
            near(read.value.magnitudes, curve.magnitudes) &&
            near(read.value.phasesDeg ?? [], curve.phasesDeg ?? [])
          );
        },
      ),
      { seed: 58 },
    );
  });
});

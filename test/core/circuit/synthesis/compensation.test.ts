import { describe, expect, it } from 'vitest';
import {
  capacitor,
  coil,
  conjugateCoilSection,
  conjugateResonanceSection,
  inductor,
  inputImpedance,
  lPadSection,
  motionalElements,
  type Part,
  partBranches,
  resistor,
  type Section,
  shuntNotchSection,
  source,
  trapResistance,
  trapSection,
} from '../../../../src/core/circuit/index.ts';
import { wordedCodes } from '../../../../src/core/messages/index.ts';
import { logOmegas } from '../randomCircuit.ts';
import { solved, succeeded } from '../solved.ts';
import { sectionTransfer } from './sectionTransfer.ts';

const omegas = logOmegas(10, 30000, 40);

describe('networks across a driver', () => {
  const driver = { reOhm: 6.2, fsHz: 35.8, qms: 4.5, qes: 0.54 };
  const { ohm, farad, henry } = motionalElements(driver);
  const resonance = [
    resistor('Rm', ['emf', '0'], ohm),
    capacitor('Cm', ['emf', '0'], { farad, esrOhm: 0 }),
    inductor('Lm', ['emf', '0'], { henry, dcrOhm: 0, coreLossTangent: 0 }),
  ];
  const withSection = (section: Section) => section.parts.flatMap((part: Part) => partBranches(part));

  it('make coil inductance into a resistance', () => {
    const section = succeeded(conjugateCoilSection(6.2, 0.6e-3));
    const z = inputImpedance(
      solved(
        [
          source('V1', ['@out', '0'], 1, 0),
          coil('LS1', ['@out', '0'], { reOhm: 6.2, leH: 0.6e-3, semiInductance: null }),
          ...withSection(section),
        ],
        omegas,
      ),
      'V1',
    );
    for (let f = 0; f < omegas.length; f++) {
      expect(z.re[f]!).toBeCloseTo(6.2, 9);
      expect(z.im[f]!).toBeCloseTo(0, 9);
    }
  });

  it('make a resonance into a resistance; the peak before is Re (1 + Qms/Qes) at fs', () => {
    const bare = [source('V1', ['@out', '0'], 1, 0), resistor('Re', ['@out', 'emf'], 6.2), ...resonance];
    const peak = inputImpedance(solved(bare, Float64Array.of(2 * Math.PI * 35.8)), 'V1');
    expect(peak.re[0]!).toBeCloseTo(6.2 * (1 + 4.5 / 0.54), 8);
    const section = succeeded(conjugateResonanceSection(driver));
    const z = inputImpedance(solved([...bare, ...withSection(section)], omegas), 'V1');
    for (let f = 0; f < omegas.length; f++) {
      expect(z.re[f]!).toBeCloseTo(6.2, 8);
      expect(z.im[f]!).toBeCloseTo(0, 8);
    }
  });
});

describe('L-pad', () => {
  it.each(['at-driver', 'at-source'] as const)('%s: attenuates as asked and keeps the input resistance', (end) => {
    const solution = sectionTransfer(succeeded(lPadSection(4.5, 7, end)), 7, Float64Array.of(1000));
    expect(20 * Math.log10(solution.potential('@out').re[0]!)).toBeCloseTo(-4.5, 10);
    expect(inputImpedance(solution, 'V1').re[0]!).toBeCloseTo(7, 10);
  });
  it('refuses to attenuate by nothing', () => {
    const result = lPadSection(0, 8, 'at-driver');
    expect(result.ok ? [] : result.problems.map((p) => p.place.field)).toEqual(['attenuationDb']);
    expect(wordedCodes()).toContain('circuit.section-value');
  });
});

describe('notches', () => {
  it('a trap of given depth lowers a resistive load by it at the centre, and half of the tank’s width at ±1/(2Q)', () => {
    const [loadOhm, centreHz, q] = [8, 2200, 3];
    const section = succeeded(trapSection({ centreHz, q, ohm: trapResistance(7, loadOhm) }));
    const out = sectionTransfer(section, loadOhm, Float64Array.of(2 * Math.PI * centreHz, 1, 1e7)).potential('@out');
    expect(20 * Math.log10(Math.hypot(out.re[0]!, out.im[0]!))).toBeCloseTo(-7, 9);
    expect(out.re[1]!).toBeCloseTo(1, 4);
    expect(out.re[2]!).toBeCloseTo(1, 3);
    // At the edges of its band a tank's conductance and susceptance are equal: |Z| = R/√2.
    const edge = centreHz * (Math.sqrt(1 + 1 / (4 * q * q)) + 1 / (2 * q));
    const alone = inputImpedance(sectionTransfer(section, 1e-3, Float64Array.of(2 * Math.PI * edge)), 'V1');
    expect(Math.hypot(alone.re[0]!, alone.im[0]!)).toBeCloseTo(trapResistance(7, loadOhm) / Math.SQRT2, 2);
  });

  it('a shunt notch is its resistance at the centre, and its Q tells the width', () => {
    const [centreHz, q, ohm] = [3400, 4, 3];
    const section = succeeded(shuntNotchSection({ centreHz, q, ohm }));
    const edge = centreHz * (Math.sqrt(1 + 1 / (4 * q * q)) + 1 / (2 * q));
    const z = inputImpedance(
      sectionTransfer(
        section,
        1e6,
        Float64Array.of(centreHz, edge).map((f) => 2 * Math.PI * f),
      ),
      'V1',
    );
    expect(z.re[0]!).toBeCloseTo(ohm, 4);
    expect(z.im[0]!).toBeCloseTo(0, 4);
    expect(z.im[1]! / z.re[1]!).toBeCloseTo(1, 4);
  });

  it('refuse values not above 0', () => {
    for (const section of [trapSection, shuntNotchSection]) {
      const result = section({ centreHz: -1, q: 0, ohm: Number.POSITIVE_INFINITY });
      expect(result.ok ? [] : result.problems.map((p) => p.place.field)).toEqual(['centreHz', 'q', 'ohm']);
    }
    expect(conjugateCoilSection(6, 0).ok).toBe(false);
    expect(conjugateResonanceSection({ reOhm: 6, fsHz: 30, qms: 0, qes: 1 }).ok).toBe(false);
  });
});

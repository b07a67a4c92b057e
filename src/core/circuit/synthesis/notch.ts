import { fail, type Result, succeed } from '../../messages/problem.ts';
import type { MotionalElements } from './motionalElements.ts';
import { capacitorPart, IN, inductorPart, notPositive, OUT, resistorPart, type Section } from './section.ts';

/** A resonant circuit: its centre, its own Q and its resistance at the centre. */
export interface Resonance {
  readonly centreHz: number;
  readonly q: number;
  readonly ohm: number;
}

/**
 * Coil, capacitor and resistor side by side, in series with the driver: a trap. L = R/(ω0 Q), C = Q/(ω0 R); at the centre
 * only R is left, which lowers the driver by its share with the load.
 * Source: resonant circuits of circuit theory, derived.
 * @example trapElements({ centreHz: 1200, q: 3, ohm: 20 })
 */
export function trapElements({ centreHz, q, ohm }: Resonance): MotionalElements {
  const omega = 2 * Math.PI * centreHz;
  return { ohm, henry: ohm / (omega * q), farad: q / (omega * ohm) };
}

/**
 * Coil, capacitor and resistor in a chain across the driver: a shunt notch. L = Q R/ω0, C = 1/(ω0 Q R).
 * Source: resonant circuits of circuit theory, derived.
 * @example shuntNotchElements({ centreHz: 3400, q: 4, ohm: 3 })
 */
export function shuntNotchElements({ centreHz, q, ohm }: Resonance): MotionalElements {
  const omega = 2 * Math.PI * centreHz;
  return { ohm, henry: (q * ohm) / omega, farad: 1 / (omega * q * ohm) };
}

/**
 * Resistance of a trap that lowers a resistive load by so many dB at its centre.
 * @example trapResistance(6, 8)
 */
export const trapResistance = (depthDb: number, loadOhm: number): number => loadOhm * (10 ** (depthDb / 20) - 1);

/**
 * The trap in series with the driver as a section. Problems: `circuit.section-value`.
 * @example trapSection({ centreHz: 1200, q: 3, ohm: 20 })
 */
export function trapSection(resonance: Resonance): Result<Section> {
  const problems = notPositive({ ...resonance });
  if (problems.length > 0) return fail(...problems);
  const { ohm, henry, farad } = trapElements(resonance);
  return succeed({
    parts: [
      inductorPart('L1', [IN, OUT], henry),
      capacitorPart('C1', [IN, OUT], farad),
      resistorPart('R1', [IN, OUT], ohm),
    ],
    source: 'Parallel resonant circuit, circuit theory; derived',
    assumes: 'The driver is a resistance around the centre; compensate its impedance first where it is not.',
  });
}

/**
 * The notch across the driver as a section. Problems: `circuit.section-value`.
 * @example shuntNotchSection({ centreHz: 3400, q: 4, ohm: 3 })
 */
export function shuntNotchSection(resonance: Resonance): Result<Section> {
  const problems = notPositive({ ...resonance });
  if (problems.length > 0) return fail(...problems);
  const { ohm, henry, farad } = shuntNotchElements(resonance);
  return succeed({
    parts: [
      resistorPart('R1', [OUT, '@1'], ohm),
      inductorPart('L1', ['@1', '@2'], henry),
      capacitorPart('C1', ['@2', '0'], farad),
    ],
    source: 'Series resonant circuit, circuit theory; derived',
    assumes:
      'Something with an impedance stands before it (a coil or capacitor of the crossover): across an amplifier alone it ' +
      'only loads it. The resistor includes the winding resistance of the coil.',
  });
}

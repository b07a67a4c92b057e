import { fail, type Result, succeed } from '../../messages/problem.ts';
import { type MotionalElements, motionalElements } from './motionalElements.ts';
import { capacitorPart, inductorPart, notPositive, OUT, resistorPart, type Section } from './section.ts';

/**
 * Resistor and capacitor that, in series across a driver, turn Re + jωLe into Re: R = Re, C = Le/Re².
 * Source: O. J. Zobel, "Theory and design of uniform and composite electric wave-filters", Bell Syst. Tech. J. 2, 1923.
 * @example coilConjugate(6.2, 0.6e-3)
 */
export const coilConjugate = (reOhm: number, leH: number): { readonly ohm: number; readonly farad: number } => ({
  ohm: reOhm,
  farad: leH / reOhm ** 2,
});

/**
 * Resistor, coil and capacitor that, in series across a driver, turn Re and its resonance into Re: the dual of the
 * motional elements, L = Re² Cm, C = Lm/Re², R = Re + Re²/Rm.
 * Source: W. M. Leach, "Impedance Compensation Networks for the Lossy Voice-Coil Inductance of Loudspeaker Drivers",
 * JAES 52 (4), 2004, and the dual by derivation.
 * @example resonanceConjugate({ reOhm: 6.2, fsHz: 35.8, qms: 4.5, qes: 0.54 })
 */
export function resonanceConjugate(driver: Parameters<typeof motionalElements>[0]): MotionalElements {
  const { ohm, farad, henry } = motionalElements(driver);
  const squared = driver.reOhm ** 2;
  return { ohm: driver.reOhm + squared / ohm, farad: henry / squared, henry: farad * squared };
}

/**
 * The network for the coil's inductance as a section across the driver.
 * Problems: `circuit.section-value`.
 * @example conjugateCoilSection(6.2, 0.6e-3)
 */
export function conjugateCoilSection(reOhm: number, leH: number): Result<Section> {
  const problems = notPositive({ reOhm, leH });
  if (problems.length > 0) return fail(...problems);
  const { ohm, farad } = coilConjugate(reOhm, leH);
  return succeed({
    parts: [resistorPart('R1', [OUT, '@1'], ohm), capacitorPart('C1', ['@1', '0'], farad)],
    source: 'O. J. Zobel, Bell Syst. Tech. J. 2, 1923',
    assumes:
      'The coil is a resistance and a plain inductance; the resonance is far below. Real coils rise more slowly: fit the ' +
      'values to the measured impedance.',
  });
}

/**
 * The network for the impedance peak at resonance as a section across the driver.
 * Problems: `circuit.section-value`.
 * @example conjugateResonanceSection({ reOhm: 6.2, fsHz: 35.8, qms: 4.5, qes: 0.54 })
 */
export function conjugateResonanceSection(driver: Parameters<typeof motionalElements>[0]): Result<Section> {
  const problems = notPositive({ ...driver });
  if (problems.length > 0) return fail(...problems);
  const { ohm, farad, henry } = resonanceConjugate(driver);
  return succeed({
    parts: [
      resistorPart('R1', [OUT, '@1'], ohm),
      inductorPart('L1', ['@1', '@2'], henry),
      capacitorPart('C1', ['@2', '0'], farad),
    ],
    source: 'W. M. Leach, JAES 52 (4), 2004; the dual of the motional elements of R. H. Small, JAES 20 (5), 1972',
    assumes:
      'Resonance and both Q values are those in the cabinet, with one peak (sealed or free). The resistor includes the ' +
      'winding resistance of the coil.',
  });
}

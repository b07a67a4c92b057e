import { fail, type Result, succeed } from '../../messages/problem.ts';
import { IN, notPositive, OUT, resistorPart, type Section } from './section.ts';

export interface LPadValues {
  readonly seriesOhm: number;
  readonly shuntOhm: number;
}

/** Where the shunt resistor stands: across the driver, behind the series one, or at the source, before it. */
export type LPadEnd = 'at-driver' | 'at-source';

/**
 * An L-pad that attenuates by so many dB and shows the load's own resistance to the crossover.
 * With k = 10^(dB/20): across the driver, series R (k-1)/k and shunt R/(k-1); at the source, series R (k-1) and
 * shunt R k/(k-1).
 * Source: the L-section attenuator of any handbook; formulas from memory, checked by the input resistance.
 * @example lPadValues(6, 8, 'at-driver')
 */
export function lPadValues(attenuationDb: number, loadOhm: number, end: LPadEnd): LPadValues {
  const k = 10 ** (attenuationDb / 20);
  return end === 'at-driver'
    ? { seriesOhm: (loadOhm * (k - 1)) / k, shuntOhm: loadOhm / (k - 1) }
    : { seriesOhm: loadOhm * (k - 1), shuntOhm: (loadOhm * k) / (k - 1) };
}

/**
 * The pad as a section.
 * Problems: `circuit.section-value` for an attenuation or load not above 0.
 * @example lPadSection(3, 8, 'at-driver')
 */
export function lPadSection(attenuationDb: number, loadOhm: number, end: LPadEnd): Result<Section> {
  const problems = notPositive({ attenuationDb, loadOhm });
  if (problems.length > 0) return fail(...problems);
  const { seriesOhm, shuntOhm } = lPadValues(attenuationDb, loadOhm, end);
  return succeed({
    parts: [
      resistorPart('R1', [IN, OUT], seriesOhm),
      resistorPart('R2', [end === 'at-driver' ? OUT : IN, '0'], shuntOhm),
    ],
    source: 'L-section attenuator, common practice; formulas from memory, checked by the input resistance',
    assumes: 'The driver is a resistance of this size in its band. Check the power of both resistors.',
  });
}

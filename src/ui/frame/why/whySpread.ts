import { greatestInBand, leastInBand } from '../../../core/design/band.ts';
import { MEAN_FROM_HZ, RIPPLE_TO_HZ } from '../../../core/design/levelFigures.ts';
import { levelsDbSpl } from '../../../core/speaker/complexCurve.ts';
import { figure, type WhyInput, type WhyNote } from './whyNote.ts';

/** Why the level is even to ± so many dB: half the way from the least to the greatest level of the sum. */
export function whySpread({ evaluation: { keyFigures, simulation } }: WhyInput): WhyNote | null {
  if (keyFigures.rippleDb === null) return null;
  const levels = levelsDbSpl(simulation.sum);
  const greatest = greatestInBand(levels, simulation.frequenciesHz, MEAN_FROM_HZ, RIPPLE_TO_HZ);
  const least = leastInBand(levels, simulation.frequenciesHz, MEAN_FROM_HZ, RIPPLE_TO_HZ);
  if (!greatest || !least) return null;
  return {
    title: 'Why this ±?',
    formula: '± = (Lmax − Lmin) / 2, from 200 Hz to 10 kHz',
    lines: [
      {
        symbol: 'Lmax',
        meaning: `greatest level, at ${figure(greatest.atHz, 'frequency')}`,
        value: `${greatest.value.toFixed(2)} dB`,
      },
      {
        symbol: 'Lmin',
        meaning: `least level, at ${figure(least.atHz, 'frequency')}`,
        value: `${least.value.toFixed(2)} dB`,
      },
    ],
    result: { symbol: '±', meaning: 're the middle between them', value: `${keyFigures.rippleDb.toFixed(1)} dB` },
    holds:
      'Levels are dB re 20 µPa where you listen, at the set drive and in the set radiation view, without smoothing. Not given ' +
      'where the level falls more than 20 dB below its greatest: such a speaker does not cover the range.',
    source: 'Convention of this program; reference pressure 20 µPa: ISO 1683 (from memory).',
  };
}

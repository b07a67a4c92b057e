import { figure, type WhyInput, type WhyNote } from './whyNote.ts';

/** Why the bass is said to end where it does: 3 dB below the mean of the middle range, where you listen. */
export function whyLowEnd({ evaluation }: WhyInput): WhyNote | null {
  const { lowMinus3Hz, meanLevelDbSpl } = evaluation.keyFigures;
  if (lowMinus3Hz === null || meanLevelDbSpl === null) return null;
  return {
    title: 'Why this lower end?',
    formula: 'L(f₃) = Lm − 3 dB, first met going down from 200 Hz',
    lines: [
      { symbol: 'Lm', meaning: 'mean level of the sum, 200 Hz to 2 kHz', value: `${meanLevelDbSpl.toFixed(1)} dB` },
      { symbol: 'L(f₃)', meaning: '3 dB below it', value: `${(meanLevelDbSpl - 3).toFixed(1)} dB` },
    ],
    result: { symbol: 'f₃', meaning: 'lower end', value: figure(lowMinus3Hz, 'frequency') },
    holds:
      'Levels are dB re 20 µPa where you listen, at the set drive and in the set radiation view; the mean is taken over the ' +
      'logarithm of frequency. On its own baffle or in full space the bass stands lower against the mean than in half space.',
    source: 'Convention of this program; reference pressure 20 µPa: ISO 1683 (from memory).',
  };
}

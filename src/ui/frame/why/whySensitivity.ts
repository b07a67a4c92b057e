import { figure, type WhyInput, type WhyNote } from './whyNote.ts';

/** Why the sensitivity is what it is, and how it relates to the level that is heard at the listening place. */
export function whySensitivity({ evaluation, project, units }: WhyInput): WhyNote | null {
  const { sensitivityDbSpl, meanLevelDbSpl } = evaluation.keyFigures;
  if (sensitivityDbSpl === null) return null;
  const { driveV } = project.chain;
  const { distanceM } = project.listening;
  const driveDb = 20 * Math.log10(driveV / 2.83);
  const distanceDb = -20 * Math.log10(distanceM);
  const heard = meanLevelDbSpl === null ? 'not defined' : decibels(meanLevelDbSpl);
  return {
    title: 'Why this sensitivity?',
    formula: 'L = mean of 20 · log10(p / 20 µPa) from 200 Hz to 2 kHz, at 1 m for 2.83 V, in the set radiation view',
    lines: [
      { symbol: 'U', meaning: 'drive now', value: `${figure(driveV, 'voltage')}: ${signed(driveDb)} re 2.83 V` },
      {
        symbol: 'r',
        meaning: 'listening distance now',
        value: `${figure(distanceM, 'length', units)}: ${signed(distanceDb)} re 1 m from one point`,
      },
      { symbol: 'Lr', meaning: 'the same mean where you listen, at your drive', value: heard },
    ],
    result: { symbol: 'L', meaning: 'sensitivity', value: decibels(sensitivityDbSpl) },
    holds:
      'The mean is taken over the logarithm of frequency, on axis at the height of the highest driver. 2.83 V is 1 W into 8 Ω; into ' +
      '4 Ω it is 2 W. Drivers apart from one another do not fall by exactly 6 dB for twice the distance.',
    source:
      'Convention of this program; reference pressure 20 µPa: ISO 1683. IEC 60268-5 states it for 1 W instead (from memory).',
  };
}

const decibels = (value: number): string => `${value.toFixed(1)} dB`;
const signed = (value: number): string => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)} dB`;
